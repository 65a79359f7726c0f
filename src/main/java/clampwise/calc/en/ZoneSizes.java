package clampwise.calc.en;

import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/**
 * Sizes of the roof zones for one wind direction, EN 1991-1-4 figures 7.6 to 7.9.
 *
 * @param lengthM length e [m]
 * @param cornerM length of a corner along the windward edge, e/4 [m]
 * @param stripM depth of the windward strip, e/10 [m]
 * @param middleM distance at which zone H ends on flat roofs and along the eave, e/2 [m]
 */
public record ZoneSizes(double lengthM, double cornerM, double stripM, double middleM) {

  /**
   * Sizes of the zones: e = min(b, 2 h), corners e/4 by e/10, middle to e/2 (EN 1991-1-4, figures
   * 7.6 to 7.9; from libraries, one layout read in a worked calculation).
   *
   * @param tables tables of EN 1991-1-4
   * @param acrossWindM plan size b of the building across the wind [m]
   * @param heightM height h of the roof [m]
   * @param work takes the lines
   * @return the sizes
   */
  public static ZoneSizes of(EnTables tables, double acrossWindM, double heightM, Work work) {
    Table.Row row = tables.row("zones");
    Source source = tables.source("zones");
    double heights = row.number("heights");
    Term length =
        Term.length("e_w", "length e of the zones", Math.min(acrossWindM, heights * heightM));
    work.write(
        length,
        "min(b," + Formulas.number(heights) + "*h)",
        source,
        Term.length("b", "plan size across the wind", acrossWindM),
        Term.length("h", "height of the roof", heightM));
    Shares shares = new Shares(row, length, source, work);
    return new ZoneSizes(
        length.si(),
        shares.of("x_F", "length of a corner", "corner"),
        shares.of("y_F", "depth of the windward strip", "strip"),
        shares.of("y_H", "end of the middle", "middle"));
  }

  private record Shares(Table.Row row, Term length, Source source, Work work) {

    double of(String symbol, String meaning, String column) {
      double share = row.number(column);
      return work.write(
          Term.length(symbol, meaning, share * length.si()),
          Formulas.number(share) + "*e_w",
          source,
          length);
    }
  }
}
