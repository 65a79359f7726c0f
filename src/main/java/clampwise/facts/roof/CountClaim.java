package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.job.Count;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;

/**
 * A count the drawings state, held against the layout.
 *
 * @param what what is counted
 * @param claimed number stated
 * @param counted number in the layout
 * @param difference how many the statement is off, without sign
 * @param remedy what to correct
 * @param drawnAt where the drawing lacks what is counted, if it is known to
 */
public record CountClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String what,
    int claimed,
    int counted,
    int difference,
    String remedy,
    List<Span> drawnAt)
    implements Fact {

  /**
   * A stated count against a counted one.
   *
   * @param what the things counted, in the plural
   */
  public static CountClaim of(String what, Count claimed, int counted) {
    int difference = Math.abs(claimed.value() - counted);
    String remedy = "correct the count to " + counted + ", or the layout by " + difference;
    return of(what, claimed, counted, remedy, List.of());
  }

  /**
   * A stated count that is right where the drawing lacks something.
   *
   * @param remedy what to add to the drawing
   * @param drawnAt where to add it
   */
  public static CountClaim lacking(
      String what, Count claimed, int counted, String remedy, List<Span> drawnAt) {
    return of(what, claimed, counted, remedy, drawnAt);
  }

  private static CountClaim of(
      String what, Count claimed, int counted, String remedy, List<Span> drawnAt) {
    return new CountClaim(
        subject(what),
        subject(what),
        claimed.at(),
        Unit.NUMBER,
        claimed.value() == 1 ? what.substring(0, what.length() - 1) : what,
        claimed.value(),
        counted,
        Math.abs(claimed.value() - counted),
        remedy,
        drawnAt);
  }

  /** What a statement is about. */
  public static Subject subject(String what) {
    return Subject.of("claims", what);
  }
}
