package clampwise.job;

import clampwise.job.Quantity.Length;
import clampwise.source.Span;

/** A rectangle's extent along the eave and up the slope; written {@code 100 ft x 31 ft 7 in}. */
public record Size(Length along, Length up, Span at) implements Written {}
