package clampwise.catalogue;

import clampwise.job.Metal;
import clampwise.job.Panel;
import clampwise.job.Quantity.Thickness;
import clampwise.job.RoofAttachment;
import clampwise.job.Tested;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the test rows of an attachment that hold for a roof covering. */
public final class TestedRows {

  private TestedRows() {}

  /** Rows that hold for profile, metal, thickness and substrate, as far as those are known. */
  public static Stream<Tested> holdingFor(Panel panel, RoofAttachment part) {
    return part.tested().stream()
        .filter(row -> sameMetal(row, panel))
        .filter(row -> thickEnough(row, panel))
        .filter(row -> sameSubstrate(row, panel));
  }

  static boolean sameMetal(Tested row, Panel panel) {
    return panel.metal().map(metal -> metal.value() == row.metal().value()).orElse(true);
  }

  static boolean sameSubstrate(Tested row, Panel panel) {
    return row.substrates().isEmpty()
        || panel.substrate().isEmpty()
        || row.substrates().stream()
            .anyMatch(on -> on.value() == panel.substrate().orElseThrow().value());
  }

  static boolean thickEnough(Tested row, Panel panel) {
    return thickEnough(row.thickness(), panel, row.metal().value());
  }

  /** Whether a panel is at least as thick as a thinnest sheet; true where either is unknown. */
  static boolean thickEnough(Optional<Thickness> least, Panel panel, Metal leastMetal) {
    Optional<Double> leastM = least.flatMap(t -> SheetThickness.baseM(t, leastMetal));
    Optional<Double> panelM =
        panel.metal().flatMap(metal -> panel.thickness().flatMap(t -> baseM(t, metal.value())));
    return leastM.isEmpty() || panelM.isEmpty() || panelM.get() >= leastM.get() - 1e-7;
  }

  private static Optional<Double> baseM(Thickness thickness, Metal metal) {
    return SheetThickness.baseM(thickness, metal);
  }

  /** The largest load away from the roof among the rows that hold [N]. */
  static double mostUpN(Panel panel, RoofAttachment part) {
    List<Double> loads =
        holdingFor(panel, part).flatMap(row -> row.up().stream()).map(up -> up.n()).toList();
    return loads.stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }
}
