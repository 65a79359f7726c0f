package clampwise.calc.thermal;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;
import java.util.List;

/**
 * Least distance of a module from the roof that keeps it below a temperature.
 *
 * @param insulatedC 98th percentile of the module's temperature with an insulated back [°C]
 * @param openC the same in an open rack [°C]
 */
public record Standoff(double insulatedC, double openC) {

  /**
   * Gap X = -X₀ ln(1 - (T₀ - T)/(T₀ - T∞)).
   *
   * <p>Method of a national laboratory for the effective gap under a module, handbook 3.11 [read].
   * No gap suffices, and it is not applicable, where the open rack reaches the limit already; any
   * gap does where an insulated back stays below it. Not applicable where the insulated back is not
   * the warmer one.
   *
   * @param row row with {@code decay} X₀ [m] and {@code limit} T [°C]
   * @param source where the row comes from
   * @return gap [m]
   */
  public Outcome<Term> show(Table.Row row, Source source, Work work) {
    return show(row.number("decay"), row.number("limit"), source, work);
  }

  /**
   * The same for a module of another limit.
   *
   * @param decayM decay length X₀ [m]
   * @param limitC greatest temperature T [°C]
   */
  public Outcome<Term> show(double decayM, double limitC, Source source, Work work) {
    if (openC >= limitC) {
      return new Outcome.NotApplicable<>("no gap suffices: the open rack is too hot already");
    }
    if (insulatedC <= limitC) {
      Term none = Term.length("X", "least gap", 0);
      work.write(Line.given(none, source, "Any gap does: an insulated back stays cool enough."));
      return new Outcome.Result<>(none);
    }
    return new Outcome.Result<>(gap(decayM, limitC, source, work));
  }

  private Term gap(double decayM, double limitC, Source source, Work work) {
    double share = (insulatedC - limitC) / (insulatedC - openC);
    Term gap = Term.length("X", "least gap", -decayM * Math.log1p(-share));
    List<Term> inputs =
        List.of(
            Term.length("X_0", "decay length", decayM),
            temperature("T_0", "insulated back", insulatedC),
            temperature("T_m", "greatest temperature", limitC),
            temperature("T_r", "open rack", openC));
    work.write(new Line(gap, "-X_0*ln(1-(T_0-T_m)/(T_0-T_r))", inputs, source, ""));
    return gap;
  }

  /**
   * Temperature of a module at a gap, the inverse: T = T₀ - (T₀ - T∞)(1 - exp(-X/X₀)).
   *
   * @param decayM decay length X₀ [m]
   * @param gapM gap X [m]
   * @return 98th percentile of its temperature [°C]
   */
  public Term temperatureAt(double decayM, double gapM, Source source, Work work) {
    double cooled = -Math.expm1(-gapM / decayM);
    Term result =
        temperature(
            "T", "98th percentile of the module", insulatedC - (insulatedC - openC) * cooled);
    work.write(
        result,
        "T_0-(T_0-T_r)*(1-exp(-X/X_0))",
        source,
        temperature("T_0", "insulated back", insulatedC),
        temperature("T_r", "open rack", openC),
        Term.length("X", "gap", gapM),
        Term.length("X_0", "decay length", decayM));
    return result;
  }

  private static Term temperature(String symbol, String meaning, double celsius) {
    return new Term(symbol, meaning, celsius, Dimension.TEMPERATURE);
  }
}
