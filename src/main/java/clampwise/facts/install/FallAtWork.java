package clampwise.facts.install;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * What keeps people from falling while the array is built.
 *
 * @param heightM height of the eave [m]
 * @param fromM height from which something has to [m]
 * @param held whether something does
 */
public record FallAtWork(
    Subject subject,
    Span at,
    Unit shown,
    double heightM,
    double fromM,
    boolean held,
    Optional<Limit> limitFrom)
    implements Fact {}
