package clampwise.calc.wind;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.units.Dimension;
import clampwise.units.QuantityPrint;
import java.util.List;

/**
 * A line of a figure: straight over the logarithm of the area, constant outside its ends.
 *
 * @param first value up to the first area
 * @param last value from the last area on
 */
record Curve(double first, double firstAreaM2, double last, double lastAreaM2) {

  private static final String FORMULA = "g_1 + (g_2 - g_1) * log10(A / A_1) / log10(A_2 / A_1)";

  static Curve of(Table.Row row) {
    return new Curve(
        row.number("first"), row.number("first-area"), row.number("last"), row.number("last-area"));
  }

  double at(double areaM2) {
    if (areaM2 <= firstAreaM2) {
      return first;
    }
    return areaM2 >= lastAreaM2
        ? last
        : first
            + (last - first)
                * Math.log10(areaM2 / firstAreaM2)
                / Math.log10(lastAreaM2 / firstAreaM2);
  }

  /** The value at an area as a line of shown work. */
  Line line(Term result, Term area, Source source, Measure measure) {
    if (first == last) {
      return Line.given(result, source, "constant over the area");
    }
    if (area.si() <= firstAreaM2) {
      return Line.given(result, source, "constant up to " + text(firstAreaM2, measure));
    }
    return area.si() >= lastAreaM2
        ? Line.given(result, source, "constant from " + text(lastAreaM2, measure) + " on")
        : new Line(result, FORMULA, inputs(area), source, "");
  }

  private List<Term> inputs(Term area) {
    return List.of(
        Term.number("g_1", "value at the first area", first),
        Term.number("g_2", "value at the last area", last),
        area,
        Term.area("A_1", "first area of the line", firstAreaM2),
        Term.area("A_2", "last area of the line", lastAreaM2));
  }

  private static String text(double areaM2, Measure measure) {
    return QuantityPrint.text(areaM2, measure.of(Dimension.AREA));
  }
}
