package clampwise.finding;

import clampwise.source.Span;
import java.util.Optional;

/** One of the places at which a finding holds. */
public record Place(Subject subject, Span at, Optional<Comparison> comparison) {}
