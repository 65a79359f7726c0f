package clampwise.calc.wind;

import clampwise.calc.trail.Table;
import java.util.List;

/**
 * How far around a panel one has to look to answer whether it is exposed, whatever reading of the
 * standard holds, see {@link ExposedEdge}.
 *
 * @param readings the row of each reading
 * @param topHeightM height h2 of the panels' upper side above the roof [m]
 */
public record PanelReach(List<Table.Row> readings, double topHeightM) {

  /** The reach over all readings of the standard. */
  public static PanelReach of(WindCode code, double topHeightM) {
    return new PanelReach(
        List.of(code.tables().row(ExposedEdge.FOUR), code.tables().row(ExposedEdge.TWO)),
        topHeightM);
  }

  /** Up to this gap two panels belong to one array in any reading [m]. */
  public double sameArrayM() {
    return readings.stream().mapToDouble(this::freeM).min().orElse(0);
  }

  /** A panel further away than this changes nothing in any reading [m]. */
  public double farthestM() {
    return readings.stream().mapToDouble(this::freeM).max().orElse(0);
  }

  /** Width of the widest strip of raised uplift of any reading [m]. */
  public double stripM(double panelLengthM) {
    return readings.stream()
        .mapToDouble(
            row ->
                row.number("strip-lengths") * panelLengthM
                    + row.number("strip-heights") * topHeightM)
        .max()
        .orElse(0);
  }

  private double freeM(Table.Row row) {
    return Math.max(row.number("heights") * topHeightM, row.number("least-distance"));
  }
}
