package clampwise.calc.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;

/**
 * Resistance of a copper conductor.
 *
 * @param table rows with {@code size} [m²] and {@code resistance} of 1000 ft [Ω]
 */
public record ConductorResistance(Table table) {

  private static final double THOUSAND_FEET_M = 304.8;
  private static final double SAME = 1e-3;

  /**
   * Resistance R = r L / 1000 ft.
   *
   * <p>Direct current, uncoated copper, NEC chapter 9 table 8 [from memory]. Not applicable to
   * sizes that the table does not hold.
   *
   * @param sizeM2 cross-section [m²]
   * @param length length of the conductor [m]
   * @return resistance [Ω]
   */
  public Outcome<Term> of(double sizeM2, Term length, Work work) {
    for (Table.Row row : table.rows()) {
      double ofRow = row.number("size");
      if (Math.abs(ofRow - sizeM2) < SAME * ofRow) {
        Term per = new Term("r", "resistance of 1000 ft", row.number("resistance"), OHMS);
        work.given(per, table.source());
        Term whole = new Term("R", "resistance", per.si() * length.si() / THOUSAND_FEET_M, OHMS);
        String formula = "r*" + length.symbol();
        work.write(
            whole,
            work.formula(formula + "/304.8", formula + "/1000"),
            table.source(),
            per,
            length);
        return new Result<>(whole);
      }
    }
    return new NotApplicable<>("the table of resistances does not hold this size");
  }

  private static final Dimension OHMS = Dimension.RESISTANCE;
}
