package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.job.Count;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * A count the drawings state, held against the layout.
 *
 * @param what what is counted
 * @param claimed number stated
 * @param counted number in the layout
 * @param difference how many the statement is off, without sign
 */
public record CountClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String what,
    int claimed,
    int counted,
    int difference)
    implements Fact {

  /**
   * A stated count against a counted one.
   *
   * @param what the things counted, in the plural
   */
  public static CountClaim of(String what, Count claimed, int counted) {
    return new CountClaim(
        subject(what),
        subject(what),
        claimed.at(),
        Unit.NUMBER,
        claimed.value() == 1 ? what.substring(0, what.length() - 1) : what,
        claimed.value(),
        counted,
        Math.abs(claimed.value() - counted));
  }

  /** What a statement is about. */
  public static Subject subject(String what) {
    return Subject.of("claims", what);
  }
}
