package clampwise.calc.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;
import java.util.List;

/**
 * Factor on the open-circuit voltage of a module at the lowest temperature of the site.
 *
 * @param lowestC lowest expected ambient temperature [°C]
 */
public record ColdFactor(double lowestC) {

  private static final Source BY_MAKER = Source.of("nec", "690.7", "second-hand");
  private static final double RATED_C = 25;
  private static final double NOISE = 1e-6;

  /**
   * Factor by the maker's coefficient: k = 1 + β (T - 25).
   *
   * <p>NEC 690.7, the maker's coefficient goes before the table; handbook example 3.2
   * [second-hand].
   *
   * @param rate change of the voltage [1/K], negative for all common cells
   * @return factor [-]
   */
  public Term byCoefficient(Term rate, Work work) {
    Term factor = Term.number("k_T", "voltage factor", 1 + rate.si() * (lowestC - RATED_C));
    String formula =
        work.formula(rate.symbol() + "/100*(T-25)+1", rate.symbol() + "/100*(T-77)/1.8+1");
    work.write(new Line(factor, formula, List.of(rate, lowest()), BY_MAKER, ""));
    return factor;
  }

  /**
   * Factor of the table for crystalline silicon, by whole degrees: -20.5 °C belongs to the row that
   * begins at -21 °C.
   *
   * <p>NEC table 690.7(A) [from memory]. Not applicable above its first and below its last row.
   *
   * @param table rows with {@code from}, {@code to} [°C] and {@code factor}
   * @return factor [-]
   */
  public Outcome<Term> byTable(Table table, Work work) {
    double whole = Math.floor(lowestC + NOISE);
    for (Table.Row row : table.rows()) {
      if (whole >= row.number("from") && whole <= row.number("to")) {
        Term factor = Term.number("k_T", "voltage factor", row.number("factor"));
        String note = "Row %.0f to %.0f °C.".formatted(row.number("to"), row.number("from"));
        work.write(Line.given(factor, table.source(), note));
        return new Result<>(factor);
      }
    }
    return new NotApplicable<>("the table of voltage factors does not reach this temperature");
  }

  private Term lowest() {
    return new Term("T", "lowest temperature", lowestC, Dimension.TEMPERATURE);
  }
}
