package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The flat a bracket needs to bear on, held against the flat a corrugated sheet offers.
 *
 * @param flatM width of the flat on the crest, zero on a plain wave [m]
 * @param neededM width of the flat the bracket bears on, zero for saddles [m]
 */
public record FlatBearing(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String covering,
    double flatM,
    double neededM,
    Optional<Limit> limitFrom,
    Optional<String> fitting)
    implements Fact {}
