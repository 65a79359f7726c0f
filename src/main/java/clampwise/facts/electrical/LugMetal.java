package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The metal of a grounding conductor, held against the metals that its lug takes.
 *
 * @param lug name of the lug
 * @param circuit circuit of the conductor
 * @param metal metal of the conductor
 * @param taken whether the lug takes it
 * @param fitting lugs that do, in words
 */
public record LugMetal(
    Subject subject,
    Span at,
    Unit shown,
    String lug,
    String circuit,
    String metal,
    boolean taken,
    Optional<String> fitting)
    implements Fact {}
