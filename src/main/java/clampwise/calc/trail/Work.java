package clampwise.calc.trail;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Collects the lines of a calculation while it runs. */
public final class Work {

  private final Measure measure;
  private final List<Line> lines = new ArrayList<>();

  /** Work that will be printed in these units; formulas with constants are written for them. */
  public Work(Measure measure) {
    this.measure = measure;
  }

  /** The units of the formulas. */
  public Measure measure() {
    return measure;
  }

  /** The formula that holds in the units of this work. */
  public String formula(String metric, String imperial) {
    return measure == Measure.METRIC ? metric : imperial;
  }

  /** Writes a line and gives its value [SI]. */
  public double write(Line line) {
    lines.add(line);
    return line.result().si();
  }

  /** Writes a line and gives its value [SI]. */
  public double write(Term result, String formula, Source source, Term... inputs) {
    return write(new Line(result, formula, List.of(inputs), source, ""));
  }

  /** Writes a value that was given or read from a table and gives it back [SI]. */
  public double given(Term result, Source source) {
    return write(Line.given(result, source, ""));
  }

  /** All lines so far, in order. */
  public List<Line> lines() {
    return Collections.unmodifiableList(lines);
  }
}
