package clampwise.units;

import java.util.Optional;

/**
 * The scales that are no plain multiple of SI: slopes as {@code 4:12} or in percent, ratios such as
 * {@code 1:500}, and wire gauge.
 */
final class Scale {

  private static final double MIL_M = 2.54e-5;

  private Scale() {}

  /** The unit of a ratio over a run: {@code :12} of {@code 4:12}. */
  static Unit ratio(Dimension dimension, double run) {
    return Unit.of(":" + QuantityPrint.trimmed(run, 6), dimension, 1);
  }

  /** The run of a ratio unit, or nothing for any other unit. */
  static Optional<Double> run(Unit unit) {
    return unit.symbol().startsWith(":")
        ? Optional.of(Double.valueOf(unit.symbol().substring(1)))
        : Optional.empty();
  }

  /** SI value of a signed number in a unit. */
  static double toSi(double written, Unit unit) {
    if (unit.dimension() == Dimension.ANGLE && unit.symbol().equals("%")) {
      return Math.atan(written / 100);
    }
    return run(unit)
        .map(run -> unit.dimension() == Dimension.ANGLE ? Math.atan2(written, run) : written / run)
        .orElseGet(() -> unit.toSi(written));
  }

  /** The number one would write in a unit for an SI value. */
  static double fromSi(double si, Unit unit) {
    if (unit.dimension() == Dimension.ANGLE && unit.symbol().equals("%")) {
      return Math.tan(si) * 100;
    }
    return run(unit)
        .map(run -> (unit.dimension() == Dimension.ANGLE ? Math.tan(si) : si) * run)
        .orElseGet(() -> unit.fromSi(si));
  }

  /** Cross-section of a wire gauge [m²]; 1/0 is 0, 2/0 is -1 (ASTM B258 series, from memory). */
  static double awgM2(double gauge) {
    double diameterM = 5 * MIL_M * Math.pow(92, (36 - gauge) / 39);
    return Math.PI / 4 * diameterM * diameterM;
  }

  /** Wire gauge of a cross-section. */
  static double awg(double areaM2) {
    double diameterM = Math.sqrt(4 * areaM2 / Math.PI);
    return 36 - 39 * Math.log(diameterM / (5 * MIL_M)) / Math.log(92);
  }
}
