package clampwise.job;

import clampwise.source.Span;

/** A value that remembers where the designer wrote it. */
public interface Written {

  /** Where it was written. */
  Span at();
}
