package clampwise.facts.loads;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether the snow that may drift or slide at a step beside a plane is in its loads.
 *
 * @param plane its name
 * @param edge what its edge is there: wall or step
 * @param fields the fields whose modules it may reach
 * @param described whether the job describes what stands above the edge
 */
public record StepSnow(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String plane,
    String edge,
    String fields,
    boolean described)
    implements Fact {}
