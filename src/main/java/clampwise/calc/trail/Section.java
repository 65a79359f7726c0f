package clampwise.calc.trail;

import java.util.List;

/**
 * A part of a longer calculation.
 *
 * @param title what it works out
 * @param measure the units its formulas hold in
 * @param lines its lines, in order
 * @param decides whether its last line is one that a reader looks for first
 */
public record Section(String title, Measure measure, List<Line> lines, boolean decides) {

  public Section {
    lines = List.copyOf(lines);
  }
}
