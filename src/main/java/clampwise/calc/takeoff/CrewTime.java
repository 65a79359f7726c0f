package clampwise.calc.takeoff;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Time of a crew by pieces: each phase is its pieces times the time for one.
 *
 * <p>Common practice, no source.
 */
public final class CrewTime {

  private final Work work;
  private final List<Term> phases = new ArrayList<>();

  /** An empty plan that shows its work. */
  public CrewTime(Work work) {
    this.work = work;
  }

  /**
   * Adds a phase, n t.
   *
   * @param result symbol and meaning of its time; its value is not used
   * @param pieces how many pieces
   * @param each time for one [s]
   * @param from where that time is from
   * @return time of the phase [s]
   */
  public Term add(Term result, Term pieces, Term each, Source from) {
    work.given(each, from);
    Term phase = time(result.symbol(), result.meaning(), pieces.si() * each.si());
    work.write(phase, pieces.symbol() + "*" + each.symbol(), Source.STATICS, pieces, each);
    phases.add(phase);
    return phase;
  }

  /**
   * Time of all phases: their sum and what is spent once a job.
   *
   * @param once time spent once a job [s]
   * @return [s]
   */
  public Term all(Term once, Source from) {
    work.given(once, from);
    List<Term> parts = new ArrayList<>(List.of(once));
    parts.addAll(phases);
    double sumS = parts.stream().mapToDouble(Term::si).sum();
    Term all = time("T", "time of all phases", sumS);
    String formula = String.join(" + ", parts.stream().map(Term::symbol).toList());
    work.write(new Line(all, formula, parts, Source.STATICS, ""));
    return all;
  }

  /** A time [s]. */
  public static Term time(String symbol, String meaning, double seconds) {
    return new Term(symbol, meaning, seconds, Dimension.DURATION);
  }
}
