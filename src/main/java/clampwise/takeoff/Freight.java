package clampwise.takeoff;

import clampwise.calc.takeoff.WholeNumbers;
import clampwise.catalogue.Limits;
import clampwise.job.Count;
import java.util.List;
import java.util.Optional;

/**
 * What has to be brought to the roof.
 *
 * @param fewest pallets of modules, packed as densely as is usual
 * @param most pallets of modules, packed as loosely as is usual
 * @param packing modules on a pallet: the range that was assumed, or twice the number that is given
 * @param palletKg mass of an empty pallet [kg]
 * @param modulesKg mass of the modules, if it is known [kg]
 * @param hardwareKg mass of all else that has one, spares with it, if all of it is known [kg]
 */
public record Freight(
    int fewest,
    int most,
    Packing packing,
    double palletKg,
    Optional<Double> modulesKg,
    Optional<Double> hardwareKg) {

  /** Modules on a pallet. */
  public record Packing(int least, int most) {

    static Packing of(Optional<Count> given, Limits rules) {
      return given
          .map(count -> Math.max(1, count.value()))
          .map(count -> new Packing(count, count))
          .orElseGet(
              () ->
                  new Packing(
                      (int) rules.get("modules-per-pallet-least").si(),
                      (int) rules.get("modules-per-pallet-most").si()));
    }
  }

  static Freight of(List<PartLine> lines, Packing packing, Limits rules) {
    return new Freight(
        pallets(lines, packing.most()),
        pallets(lines, packing.least()),
        packing,
        rules.get("pallet-mass").si(),
        massKg(lines, true),
        massKg(lines, false));
  }

  /** The same, where the mass of the hardware is not known. */
  Freight withoutHardware() {
    return new Freight(fewest, most, packing, palletKg, modulesKg, Optional.empty());
  }

  /** Types of modules do not share pallets. */
  private static int pallets(List<PartLine> lines, int inEach) {
    return lines.stream()
        .filter(line -> line.part().kind() == PartKind.MODULE)
        .mapToInt(line -> WholeNumbers.packs(line.order(), inEach))
        .sum();
  }

  private static Optional<Double> massKg(List<PartLine> lines, boolean modules) {
    double sumKg = 0;
    for (PartLine line : lines) {
      if ((line.part().kind() == PartKind.MODULE) == modules) {
        if (line.orderKg().isEmpty()) {
          return Optional.empty();
        }
        sumKg += line.orderKg().get();
      }
    }
    return Optional.of(sumKg);
  }

  /** Mass of modules, hardware and the fewest pallets, if all of it is known [kg]. */
  public Optional<Double> totalKg() {
    return modulesKg.flatMap(
        modules -> hardwareKg.map(hardware -> modules + hardware + fewest * palletKg));
  }

  /** Share of the hardware in that mass, if it is known. */
  public Optional<Double> hardwareShare() {
    return totalKg()
        .filter(total -> total > 0)
        .flatMap(total -> hardwareKg.map(hardware -> hardware / total));
  }
}
