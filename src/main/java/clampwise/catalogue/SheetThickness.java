package clampwise.catalogue;

import clampwise.calc.SheetGauge;
import clampwise.calc.SheetGauge.Sheet;
import clampwise.job.Metal;
import clampwise.job.Quantity.Thickness;
import java.util.Optional;

/** Base metal thickness of a sheet, from a written length or from a gauge and the metal. */
public final class SheetThickness {

  private SheetThickness() {}

  /**
   * Base metal thickness.
   *
   * @param written a length, or a gauge
   * @param metal metal of the sheet
   * @return thickness [m]; nothing for a gauge that has no thickness in this metal
   */
  public static Optional<Double> baseM(Thickness written, Metal metal) {
    return written.isGauge()
        ? series(metal).flatMap(sheet -> SheetGauge.thicknessM(written.si(), sheet))
        : Optional.of(written.si());
  }

  private static Optional<Sheet> series(Metal metal) {
    return switch (metal) {
      case STEEL -> Optional.of(Sheet.STEEL_BASE);
      case STAINLESS_STEEL -> Optional.of(Sheet.STAINLESS_STEEL);
      case ALUMINIUM -> Optional.of(Sheet.ALUMINIUM);
      case COPPER, ZINC -> Optional.empty();
    };
  }
}
