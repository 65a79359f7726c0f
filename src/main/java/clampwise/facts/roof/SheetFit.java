package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The thickness of a sheet held against the thinnest sheet a part may hold to.
 *
 * @param sheet thickness as written, such as {@code 24 ga steel}
 * @param thicknessM base metal thickness [m]
 * @param leastM thinnest sheet [m]
 * @param leastFrom what the thinnest sheet rests on
 */
public record SheetFit(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String covering,
    String sheet,
    double thicknessM,
    double leastM,
    String leastFrom,
    Optional<Limit> limitFrom,
    Optional<String> fitting)
    implements Fact {}
