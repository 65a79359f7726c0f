package clampwise.job;

import clampwise.source.Span;

/** A yes or no ({@code yes}, {@code no}, {@code true}, {@code false}). */
public record Flag(boolean value, Span at) implements Written {}
