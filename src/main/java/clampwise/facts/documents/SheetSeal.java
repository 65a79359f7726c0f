package clampwise.facts.documents;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Whether a sheet that needs a seal of a licensed engineer has it.
 *
 * @param sheet its number or name
 * @param kind what it is, in words
 * @param sealed whether it is sealed
 */
public record SheetSeal(
    Subject subject,
    Span at,
    Unit shown,
    String sheet,
    String kind,
    boolean sealed,
    Optional<Limit> limitFrom)
    implements Fact {}
