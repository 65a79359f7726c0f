package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.ZoneWidth;
import clampwise.calc.ZoneWidth.Roof;
import clampwise.calc.trail.Table;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import clampwise.units.Units;

/** Chooses the figure of external pressure coefficients for a roof. */
public final class RoofFigure {

  private static final double ANGLE_NOISE_RAD = 1e-9;
  private static final double LENGTH_NOISE_M = 1e-9;

  private RoofFigure() {}

  /**
   * Figure of ASCE 7-16 or 7-22 by shape and slope, 30.3-2A to 30.3-5B for heights up to 60 ft; for
   * higher buildings figure 30.5-1 (7-16) or 30.4-1 (7-22), here up to 7 degrees. Choice
   * second-hand, slope limits of low monoslope and of tall roofs from memory.
   *
   * @param roof the building [m, rad]
   * @return number of the figure, such as {@code 30.3-2B}, or why there is none
   */
  public static Outcome<String> of(WindCode code, Roof roof) {
    Table.Row tall = code.editionTable("tall-roof-figure").rows().get(0);
    double highestM = tall.number("height-up-to");
    if (roof.heightM() > highestM + LENGTH_NOISE_M) {
      double steepestRad = tall.number("slope-up-to");
      return isUpTo(roof, steepestRad)
          ? new Result<>(tall.word("figure"))
          : new NotApplicable<>(
              "above a height of "
                  + QuantityPrint.text(highestM, Unit.FOOT)
                  + " only roofs up to "
                  + QuantityPrint.trimmed(Units.DEGREE.fromSi(steepestRad), 2)
                  + " degrees have a figure here");
    }
    return ZoneWidth.figure(code.tables(), roof);
  }

  private static boolean isUpTo(Roof roof, double slopeRad) {
    return roof.slopeRad() <= slopeRad + ANGLE_NOISE_RAD;
  }
}
