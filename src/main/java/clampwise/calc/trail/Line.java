package clampwise.calc.trail;

import java.util.List;

/**
 * One line of shown work: a result, the formula that gives it and the values put in.
 *
 * <p>The formula is arithmetic that anyone can key in: symbols of the inputs, numbers, {@code + - *
 * / ^}, brackets and the functions {@code sqrt, log10, ln, exp, sin, cos, tan, min, max, abs} with
 * angles in degrees. It holds for the values in the units of the measure in which the line is
 * printed. An empty formula means that the result was given or read from a table.
 *
 * @param result what the line gives
 * @param formula right side of the equation, or empty
 * @param inputs the numbers in the formula
 * @param source where the formula or the value comes from
 * @param note a condition or choice in one sentence, or empty
 */
public record Line(Term result, String formula, List<Term> inputs, Source source, String note) {

  public Line {
    inputs = List.copyOf(inputs);
  }

  /** A line whose result was given or read from a table. */
  public static Line given(Term result, Source source, String note) {
    return new Line(result, "", List.of(), source, note);
  }

  /** The same line with a note. */
  public Line noting(String sentence) {
    return new Line(result, formula, inputs, source, sentence);
  }
}
