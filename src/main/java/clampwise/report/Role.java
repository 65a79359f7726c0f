package clampwise.report;

/** What a stretch of text is for, so that a terminal may colour it. */
public enum Role {
  PLAIN,
  HEADING,
  ERROR,
  WARNING,
  NOTE,
  PLACE,
  FAINT
}
