package clampwise.facts.roof;

import clampwise.calc.SheetGauge;
import clampwise.calc.SheetGauge.Sheet;
import clampwise.job.Metal;
import clampwise.job.Quantity.Thickness;
import java.util.Optional;

/** Turns written thicknesses into base metal thicknesses. */
final class SheetThickness {

  /** Half of the last digit that gauge tables and data sheets print in millimetres. */
  private static final double SAME_M = 5e-6;

  private SheetThickness() {}

  /** The thickness [m]; empty for a gauge that means nothing in this metal. */
  static Optional<Double> baseM(Thickness written, Metal metal) {
    return written.isGauge()
        ? series(metal).flatMap(sheet -> SheetGauge.thicknessM(written.si(), sheet))
        : Optional.of(written.si());
  }

  /** A thickness, or the least one [m] where both are the same sheet written in two ways. */
  static double levelled(double thicknessM, double leastM) {
    return Math.abs(thicknessM - leastM) <= SAME_M ? leastM : thicknessM;
  }

  private static Optional<Sheet> series(Metal metal) {
    return switch (metal) {
      case STEEL -> Optional.of(Sheet.STEEL_BASE);
      case ALUMINIUM -> Optional.of(Sheet.ALUMINIUM);
      case STAINLESS_STEEL -> Optional.of(Sheet.STAINLESS_STEEL);
      case COPPER, ZINC -> Optional.empty();
    };
  }
}
