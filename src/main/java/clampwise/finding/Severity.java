package clampwise.finding;

/** How much a finding weighs. */
public enum Severity {
  ERROR,
  WARNING,
  NOTE;

  /** The word printed for it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
