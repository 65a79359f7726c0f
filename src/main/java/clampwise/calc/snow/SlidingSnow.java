package clampwise.calc.snow;

import clampwise.calc.EditionTables;
import clampwise.calc.Outcome;
import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/**
 * Snow that slides from a higher roof.
 *
 * @param lineNm load by length of the upper eave [N/m]
 * @param widthM plan width from the upper eave that takes it [m]
 * @param pressurePa load on that width, on top of the balanced load [Pa]
 */
public record SlidingSnow(double lineNm, double widthM, double pressurePa) {

  /**
   * The roof that sheds its snow.
   *
   * @param flatPa flat roof snow load pf [Pa]
   * @param eaveToRidgeM plan distance W from eave to ridge [m]
   * @param slopeRad slope [rad]
   * @param slippery whether its surface is slippery
   */
  public record Upper(double flatPa, double eaveToRidgeM, double slopeRad, boolean slippery) {}

  /**
   * Sliding snow 0.4 pf W by length of the eave over 15 ft (ASCE 7-16 and 7-22, 7.9; read). It is
   * due from slippery roofs above 1/4 on 12 and from others above 2 on 12 (from memory). A lower
   * roof narrower than 15 ft takes the same load by area.
   *
   * @param tables tables of the edition
   * @param upper the roof that sheds its snow
   * @param work takes the lines
   * @return the load, or why there is none
   */
  public static Outcome<SlidingSnow> of(EditionTables tables, Upper upper, Work work) {
    String surface = upper.slippery ? "slippery" : "other";
    Table.Row steep = tables.table("sliding-slope").row("surface", surface).orElseThrow();
    if (Math.tan(upper.slopeRad) <= steep.number("rise") / steep.number("run") + 1e-9) {
      return new Outcome.NotApplicable<>("the upper roof is too flat for its snow to slide");
    }
    Table.Row row = tables.row("sliding");
    double lineNm = lineNm(tables.source("sliding"), upper, row.number("share"), work);
    double widthM = row.number("width");
    double pa =
        work.write(
            Term.pressure("p_sl", "sliding snow", lineNm / widthM),
            "w_sl/x_sl",
            tables.source("sliding"),
            Term.lineLoad("w_sl", "sliding snow by length of eave", lineNm),
            Term.length("x_sl", "width that takes it", widthM));
    return new Outcome.Result<>(new SlidingSnow(lineNm, widthM, pa));
  }

  /** Load at a plan distance from the upper eave [Pa]. */
  public double atPa(double fromEaveM) {
    return fromEaveM <= widthM ? pressurePa : 0;
  }

  private static double lineNm(Source source, Upper upper, double share, Work work) {
    Term run = Term.length("W", "plan distance from eave to ridge", upper.eaveToRidgeM);
    return work.write(
        Term.lineLoad("w_sl", "sliding snow by length of eave", share * upper.flatPa * run.si()),
        Formulas.number(share) + "*p_f*W",
        source,
        Term.pressure("p_f", "flat roof snow load of the upper roof", upper.flatPa),
        run);
  }
}
