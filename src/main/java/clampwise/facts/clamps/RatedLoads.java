package clampwise.facts.clamps;

import clampwise.job.Field.DesignLoad;
import clampwise.job.ModuleType;
import clampwise.job.ModuleType.ClampZone;
import clampwise.job.ModuleType.LoadBasis;
import clampwise.job.Quantity.Pressure;
import clampwise.units.QuantityPrint;
import java.util.Optional;

/** Turns the loads of a clamp-zone table into design loads. */
final class RatedLoads {

  private RatedLoads() {}

  /**
   * What the table's loads are divided by to get design loads, if the module says what they are.
   *
   * @param testFactor test load over design load [-]; IEC 61215-2, static mechanical load test
   *     [read]
   */
  static Optional<Double> factor(ModuleType type, double testFactor) {
    return type.loadsAre().map(are -> are.value() == LoadBasis.TEST ? testFactor : 1.0);
  }

  /** Whether a row carries a design load; a row without the load asked for does not. */
  static boolean carries(ClampZone row, DesignLoad load, double factor) {
    return carries(row.down(), load.down(), factor) && carries(row.up(), load.up(), factor);
  }

  /** What a row carries of a design load that it does not carry, in words. */
  static Optional<String> shortfall(ClampZone row, DesignLoad load, double factor) {
    return shortfall("down", row.down(), load.down(), factor)
        .or(() -> shortfall("up", row.up(), load.up(), factor));
  }

  private static Optional<String> shortfall(
      String way, Optional<Pressure> rated, Optional<Pressure> wanted, double factor) {
    return wanted
        .filter(load -> !carries(rated, wanted, factor))
        .map(load -> carried(way, rated, factor, load));
  }

  private static String carried(
      String way, Optional<Pressure> rated, double factor, Pressure load) {
    String wanted = QuantityPrint.text(load.si(), load.unit());
    return rated
            .map(own -> "carries " + QuantityPrint.text(own.si() / factor, load.unit()) + " " + way)
            .orElse("has no rating " + way)
        + " where the design load is "
        + wanted;
  }

  private static boolean carries(
      Optional<Pressure> rated, Optional<Pressure> wanted, double factor) {
    return wanted.isEmpty()
        || rated.filter(load -> load.pa() >= wanted.get().pa() * factor).isPresent();
  }
}
