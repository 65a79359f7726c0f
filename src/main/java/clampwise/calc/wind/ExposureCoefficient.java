package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.WindChoices.ExposureMethod;
import clampwise.units.QuantityPrint;

/** Velocity pressure exposure coefficient: how height and ground change the wind. */
public final class ExposureCoefficient {

  /** Half of the last digit that the table prints. */
  private static final double TABLE_ROUNDING = 0.005;

  private static final String MEANING = "velocity pressure exposure coefficient";

  private ExposureCoefficient() {}

  /**
   * Exposure coefficient K_z of ASCE 7-16 and 7-22: by table 26.10-1 with straight lines between
   * its rows, valid up to 500 ft, or by the formula of its note with the terrain constants of table
   * 26.11-1, valid up to the gradient height (7-22: constant above it, up to 3280 ft). Heights
   * below 15 ft take 15 ft. Tables second-hand. In 7-22 table and formula differ by up to 1.6
   * percent, in 7-16 by rounding. Unless one of them was chosen, the table counts, and the formula
   * where it gives more by more than the table was rounded; the note of the line says what the
   * other of the two would give.
   *
   * <p>The floor of 0.70 in exposure B below 30 ft belongs to the main system; it is applied only
   * if it was chosen.
   *
   * @param heightM height above ground [m]
   * @return K_z [-], or why the table or formula does not reach
   */
  public static Outcome<Double> of(WindCode code, Exposure exposure, double heightM, Work work) {
    if (!(heightM >= 0)) {
      return new NotApplicable<>("a height above ground is not below 0");
    }
    double leastM = ExposureFormula.terrain(code, exposure).number("least-height");
    double zM = Math.max(heightM, leastM);
    Outcome<Line> line = line(code, exposure, zM);
    if (line instanceof Result<Line> && heightM < leastM) {
      raise(code, heightM, leastM, work);
    }
    return line.then(found -> new Result<>(floored(code, new Place(exposure, zM), found, work)));
  }

  private record Place(Exposure exposure, double zM) {}

  private static void raise(WindCode code, double heightM, double leastM, Work work) {
    work.write(
        Term.length("z", "height used", leastM),
        "max(h, z_min)",
        code.cite(code.editionTable("exposure-coefficients")),
        Term.length("h", "height above ground", heightM),
        Term.length("z_min", "least height of the table", leastM));
  }

  private static Outcome<Line> line(WindCode code, Exposure exposure, double zM) {
    Outcome<Line> byTable = ExposureTable.line(code, exposure, zM);
    Outcome<Line> byFormula = ExposureFormula.line(code, exposure, zM);
    return isByFormula(code, byTable, byFormula)
        ? byFormula.then(line -> noting(line, severe(code, "by the formula"), "the table", byTable))
        : byTable.then(
            line -> noting(line, severe(code, "by the table"), "the formula", byFormula));
  }

  /** Says that nobody asked for this one by name. */
  private static String severe(WindCode code, String used) {
    return code.choices().method() == ExposureMethod.SEVERE
        ? used + ", which counts unless another is chosen"
        : used;
  }

  private static boolean isByFormula(
      WindCode code, Outcome<Line> byTable, Outcome<Line> byFormula) {
    return switch (code.choices().method()) {
      case TABLE -> false;
      case FORMULA -> true;
      case SEVERE -> value(byFormula) - value(byTable) > TABLE_ROUNDING;
    };
  }

  private static double value(Outcome<Line> line) {
    return line.result().map(found -> found.result().si()).orElse(0.0);
  }

  private static Outcome<Line> noting(Line line, String used, String other, Outcome<Line> rival) {
    String compared =
        rival
            .result()
            .map(o -> "; " + other + " gives " + QuantityPrint.trimmed(o.result().si(), 4))
            .orElse("");
    return new Result<>(line.noting(used + compared));
  }

  static Term result(double k) {
    return Term.number("K_z", MEANING, k);
  }

  private static double floored(WindCode code, Place place, Line line, Work work) {
    double k = work.write(line);
    Table table = code.table("exposure-b-floor");
    Table.Row row = table.rows().get(0);
    boolean low = place.exposure == Exposure.B && place.zM < row.number("below") - 1e-9;
    if (!low || !code.choices().exposureFloor()) {
      return k;
    }
    Term free = Term.number("K_free", "coefficient before the floor", k);
    Term least = Term.number("K_min", "floor in exposure B", row.number("floor"));
    Term floored = result(Math.max(k, least.si()));
    return work.write(floored, "max(K_free, K_min)", code.cite(table), free, least);
  }
}
