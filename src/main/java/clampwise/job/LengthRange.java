package clampwise.job;

import clampwise.job.Quantity.Length;
import clampwise.source.Span;

/**
 * A range of lengths, both ends included; written {@code 30 mm to 40 mm}, {@code 30 to 40 mm} or
 * {@code [30 mm, 40 mm]}.
 */
public record LengthRange(Length min, Length max, Span at) implements Written {

  /** Whether a length [m] lies within, ends included. */
  public boolean contains(double lengthM) {
    return min.m() <= lengthM && lengthM <= max.m();
  }
}
