package clampwise.calculation;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/** Results of calculations. */
final class Results {

  private Results() {}

  /** The result of the last line. */
  static Outcome<List<Term>> last(Work work) {
    List<Line> lines = work.lines();
    return of(lines.get(lines.size() - 1).result());
  }

  /** Some terms. */
  static Outcome<List<Term>> of(Term... terms) {
    return new Outcome.Result<>(List.of(terms));
  }

  /** Why there is no result. */
  static Outcome<List<Term>> none(String reason) {
    return new Outcome.NotApplicable<>(reason);
  }
}
