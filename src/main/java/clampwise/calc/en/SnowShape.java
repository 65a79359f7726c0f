package clampwise.calc.en;

import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/** Snow load shape coefficients, EN 1991-1-3 table 5.2. */
public final class SnowShape {

  private SnowShape() {}

  /**
   * Shape coefficient μ1 (EN 1991-1-3, table 5.2; read): 0.8 up to 30 degrees, straight down to 0
   * at 60 degrees; not below 0.8 where snow cannot slide.
   *
   * @param tables tables of EN 1991-1-3
   * @param pitchRad pitch, 0 to a right angle [rad]
   * @param held whether snow is kept from sliding
   * @param work takes the lines
   * @return μ1 [-]
   */
  public static double mu1(EnTables tables, double pitchRad, boolean held, Work work) {
    Table.Row row = tables.row("shape");
    double flat = row.number("flat");
    if (held) {
      Term kept = Term.number("mu_1", "shape coefficient", flat);
      return work.write(Line.given(kept, tables.source("shape"), "sliding is prevented"));
    }
    double share = (row.number("zero") - pitchRad) / (row.number("zero") - row.number("first"));
    return work.write(
        Term.number("mu_1", "shape coefficient", flat * Math.max(0, Math.min(1, share))),
        Formulas.number(flat) + "*max(0,min(1,(alpha_0-alpha)/(alpha_0-alpha_1)))",
        tables.source("shape"),
        Term.angle("alpha", "pitch", pitchRad),
        Term.angle("alpha_1", "pitch up to which all snow stays", row.number("first")),
        Term.angle("alpha_0", "pitch from which no snow stays", row.number("zero")));
  }

  /**
   * Shape coefficient μ2 of valleys (EN 1991-1-3, table 5.2; read): 0.8 + 0.8 α / 30 up to 30
   * degrees, 1.6 from there up to 60 degrees.
   *
   * @param tables tables of EN 1991-1-3
   * @param pitchRad mean pitch of the two slopes, 0 to 60 degrees [rad]
   * @param work takes the lines
   * @return μ2 [-]
   */
  public static double mu2(EnTables tables, double pitchRad, Work work) {
    Table.Row row = tables.row("shape");
    double rise = row.number("valley-rise");
    double value = row.number("flat") + rise * pitchRad / row.number("first");
    String formula =
        Formulas.filled(
            "min(%s,%s+%s*alpha/alpha_1)",
            Formulas.number(row.number("valley-most")),
            Formulas.number(row.number("flat")),
            Formulas.number(rise));
    return work.write(
        new Line(
            Term.number(
                "mu_2",
                "shape coefficient of a valley",
                Math.min(row.number("valley-most"), value)),
            formula,
            List.of(
                Term.angle("alpha", "mean pitch", pitchRad),
                Term.angle("alpha_1", "pitch from which it stays", row.number("first"))),
            tables.source("shape"),
            ""));
  }
}
