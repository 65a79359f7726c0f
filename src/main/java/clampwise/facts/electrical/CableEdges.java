package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether the edges that cables pass are guarded.
 *
 * @param guarded whether they are
 */
public record CableEdges(Subject subject, Span at, Unit shown, boolean guarded) implements Fact {}
