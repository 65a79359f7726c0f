package clampwise.calc;

import java.util.Map;
import java.util.Optional;

/**
 * Base metal thickness of sheet gauges (handbook table 2.6). A gauge means a thickness only
 * together with the metal: 26 ga is 0.0179 in of steel, 0.0217 in of galvanised sheet.
 *
 * <p>Sources: 20 ga steel second-hand, 30 ga read; stainless steel 20 to 28 ga and aluminium 20 ga
 * read; all else from memory.
 */
public final class SheetGauge {

  private static final double INCH_M = 0.0254;

  // Columns: steel base, galvanised total, stainless steel, aluminium [in].
  private static final Map<Integer, double[]> INCHES =
      Map.of(
          20, new double[] {0.0359, 0.0396, 0.036, 0.032},
          22, new double[] {0.0299, 0.0336, 0.030, 0.025},
          24, new double[] {0.0239, 0.0276, 0.024, 0.020},
          26, new double[] {0.0179, 0.0217, 0.018, 0.016},
          28, new double[] {0.0149, 0.0187, 0.015, 0.0126},
          29, new double[] {0.0135, 0.0172, 0.014, 0.011},
          30, new double[] {0.0120, 0.0157, 0.0125, 0.010});

  private SheetGauge() {}

  /** Sheets that have a gauge series; copper and zinc sheet is not sold by gauge here. */
  public enum Sheet {
    STEEL_BASE(0),
    GALVANISED_TOTAL(1),
    STAINLESS_STEEL(2),
    ALUMINIUM(3);

    private final int tableColumn;

    Sheet(int tableColumn) {
      this.tableColumn = tableColumn;
    }
  }

  /**
   * Thickness of a gauge.
   *
   * @param gauge gauge number, one of 20, 22, 24, 26, 28, 29, 30 [-]
   * @param sheet which series
   * @return thickness [m], or nothing for a gauge outside the table
   */
  public static Optional<Double> thicknessM(double gauge, Sheet sheet) {
    return Optional.of(gauge)
        .filter(g -> g == Math.rint(g))
        .map(g -> INCHES.get(g.intValue()))
        .map(row -> row[sheet.tableColumn] * INCH_M);
  }
}
