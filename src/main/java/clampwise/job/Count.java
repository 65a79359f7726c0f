package clampwise.job;

import clampwise.source.Span;

/** A whole number, never negative. */
public record Count(int value, Span at) implements Written {}
