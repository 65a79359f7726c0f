package clampwise.calc.trail;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Collects the lines of a calculation while it runs. */
public final class Work {

  private final Measure measure;
  private final List<Line> lines = new ArrayList<>();
  private final boolean read;

  /** Work that will be printed in these units; formulas with constants are written for them. */
  public Work(Measure measure) {
    this(measure, true);
  }

  private Work(Measure measure, boolean read) {
    this.measure = measure;
    this.read = read;
  }

  /** Work that nobody reads: only its values count. */
  public static Work unread() {
    return unread(Measure.METRIC);
  }

  /** The same with the constants of these units, which a code may round differently. */
  public static Work unread(Measure measure) {
    return new Work(measure, false);
  }

  /** Whether somebody reads the lines; texts that cost time may be left out otherwise. */
  public boolean isRead() {
    return read;
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
    if (read) {
      lines.add(line);
    }
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
