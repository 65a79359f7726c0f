package clampwise.calculation;

import static clampwise.units.Dimension.ANGLE;
import static clampwise.units.Dimension.FORCE;
import static clampwise.units.Dimension.LENGTH;
import static clampwise.units.Dimension.MASS;
import static clampwise.units.Dimension.NUMBER;
import static clampwise.units.Dimension.PRESSURE;

import clampwise.calc.Outcome;
import clampwise.calc.combination.Effect;
import clampwise.calc.combination.SlopeComponents;
import clampwise.calc.statics.SlopeSum;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;
import clampwise.units.Units;
import java.util.List;

/** Weight and snow on a slope, and what holds a column. */
final class SlopeCalculations {

  /** Standard gravity [m/s²]. */
  private static final double MOST = 10_000;

  private SlopeCalculations() {}

  static List<Calculation> all() {
    return List.of(downSlope(), columnSlip());
  }

  private static Calculation downSlope() {
    return new Calculation(
        "down-slope",
        "Weight and snow of a column of modules, across the roof and down the slope",
        "snow load on the plan area; modules parallel to the roof",
        List.of(
            Input.of("slope", "slope of the roof", ANGLE, 0.0, Math.PI / 2),
            Input.of("mass", "mass of a module with its clamps", MASS, 0.0),
            Input.of("length", "length of a module", LENGTH, 0.0, 10.0),
            Input.of("width", "width of a module", LENGTH, 0.0, 10.0),
            Input.of("snow", "snow load on the plan area", PRESSURE, 0.0).unless("0 Pa"),
            Input.of("modules", "modules in the column", NUMBER, 1.0, MOST).unless("1")),
        SlopeCalculations::downSlope);
  }

  private static Outcome<List<Term>> downSlope(Given given, Work work) {
    double slopeRad = given.number("slope");
    Term weight = weight(given.number("mass"), work);
    Effect own = SlopeComponents.onSlope(weight, slopeRad, work);
    double areaM2 = given.number("length") * given.number("width");
    work.write(
        Term.area("A", "area of a module", areaM2),
        "l*b",
        Source.STATICS,
        Term.length("l", "length of a module", given.number("length")),
        Term.length("b", "width of a module", given.number("width")));
    Term snowWeight = snowWeight(given.number("snow"), areaM2, slopeRad, work);
    Effect snow = SlopeComponents.onSlope(snowWeight, slopeRad, work);
    double modules = given.number("modules");
    return new Outcome.Result<>(
        List.of(
            new Part("n", "across the roof", own.normal(), snow.normal()).sum(modules, work),
            new Part("s", "down the slope", own.along(), snow.along()).sum(modules, work)));
  }

  private static Term snowWeight(double snowPa, double areaM2, double slopeRad, Work work) {
    Term weight = Term.force("S", "snow", snowPa * areaM2 * Math.cos(slopeRad));
    work.write(
        weight,
        "s*A*cos(theta)",
        Source.STATICS,
        Term.pressure("s", "snow load on the plan area", snowPa),
        Term.area("A", "area of the module", areaM2),
        Term.angle("theta", "slope", slopeRad));
    return weight;
  }

  private static Term weight(double massKg, Work work) {
    Term weight = Term.force("W", "weight of a module", massKg * Units.GRAVITY_M_PER_S2);
    work.write(
        weight,
        work.formula("m*" + Units.GRAVITY_M_PER_S2, "m"),
        Source.of("statics", "standard gravity", "worked out"),
        new Term("m", "mass of a module", massKg, Dimension.MASS));
    return weight;
  }

  /** Forces of one module in one direction. */
  private record Part(String letter, String direction, double ownN, double snowN) {

    Term sum(double modules, Work work) {
      Term sum = Term.force("E_" + letter, "of the column, " + direction, modules * (ownN + snowN));
      work.write(
          sum,
          "k*(W_" + letter + "+S_" + letter + ")",
          Source.STATICS,
          Term.number("k", "modules in the column", modules),
          Term.force("W_" + letter, "weight of a module, " + direction, ownN),
          Term.force("S_" + letter, "snow on a module, " + direction, snowN));
      return sum;
    }
  }

  private static Calculation columnSlip() {
    return new Calculation(
        "column-slip",
        "Down-slope force of a column against the slip strength of its attachments",
        "force and strength of the same limit state; attachments that share the force",
        List.of(
            Input.of("force", "down-slope force of the column", FORCE, 0.0),
            Input.of("attachments", "attachments of the column", NUMBER, 1.0, MOST),
            Input.of("slip-strength", "strength of one attachment along the seam", FORCE, 1e-3)),
        (given, work) -> {
          Term count = Term.number("n", "attachments", given.number("attachments"));
          Term each =
              Term.force("R_s", "strength of one along the seam", given.number("slip-strength"));
          double slipN = count.si() * each.si();
          work.write(
              Term.force("R_c", "strength of all along the seam", slipN),
              "n*R_s",
              Source.STATICS,
              count,
              each);
          return new Outcome.Result<>(List.of(SlopeSum.column(given.number("force"), slipN, work)));
        });
  }
}
