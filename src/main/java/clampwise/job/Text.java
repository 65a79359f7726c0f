package clampwise.job;

import clampwise.source.Span;

/** Free text or a name. */
public record Text(String value, Span at) implements Written {
  @Override
  public String toString() {
    return value;
  }
}
