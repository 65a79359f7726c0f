package clampwise.job;

import clampwise.job.Quantity.Offset;
import clampwise.source.Span;

/** A point on a roof plane: along the eave and up the slope; written {@code [6 ft, 3 ft]}. */
public record Spot(Offset along, Offset up, Span at) implements Written {}
