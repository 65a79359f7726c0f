package clampwise.finding;

/** From which severity on a finding counts as a failure. */
public enum Threshold {
  ERROR,
  WARNING,
  NOTE,
  NEVER;

  /** Whether a finding of a severity counts. */
  public boolean reachedBy(Severity severity) {
    return this != NEVER && severity.ordinal() <= ordinal();
  }
}
