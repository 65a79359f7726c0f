package clampwise.finding;

import clampwise.source.Span;

/**
 * A finding that stands in the layout and that somebody has answered for.
 *
 * @param finding what was found
 * @param kind by what it is tolerated
 * @param reason why, in the words of whoever accepted it
 * @param by person or role that answers for it; empty for a known debt
 * @param until last day, year-month-day; empty for a known debt
 * @param at where that is written
 */
public record Accepted(
    Finding finding, Kind kind, String reason, String by, String until, Span at) {

  /** By what a finding is tolerated. */
  public enum Kind {
    /** Somebody looked at it and accepted it until a day. */
    DEVIATION,
    /** It was there when clampwise was adopted. */
    DEBT
  }

  /** In one sentence: who accepted it until when and why. */
  public String words() {
    return kind == Kind.DEBT
        ? "known debt: " + reason
        : "accepted by " + by + " until " + until + ": " + reason;
  }
}
