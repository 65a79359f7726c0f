package clampwise.facts.loads;

import clampwise.facts.layout.PlacedModule;
import clampwise.job.Choice;
import clampwise.job.ModuleType;
import clampwise.job.ModuleType.ClampZone;
import clampwise.job.ModuleType.LoadBasis;
import clampwise.job.ModuleType.Side;
import clampwise.job.Quantity.Pressure;
import clampwise.units.QuantityPrint;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What would carry a pressure that a module held as it is does not: another row of its clamp-zone
 * table, or a module of the job or the catalogue that has such a row for the same side.
 *
 * @param up whether the pressure pulls away from the roof
 * @param demandPa the pressure [Pa]
 * @param testOverDesign test load over design load [-]
 */
record StrongerRow(FieldSite site, boolean up, double demandPa, double testOverDesign) {

  private static final int MODULES_NAMED = 3;

  /** What to do, in words. */
  String text(PlacedModule module) {
    Side side = module.clampedSide();
    return carrying(module.type())
        .max(Comparator.comparing(row -> row.side().value() == side))
        .map(row -> move(row, side, module.type()))
        .orElseGet(() -> "no row of " + module.typeName() + " carries that: " + others(side));
  }

  private String move(ClampZone row, Side side, ModuleType type) {
    String zone =
        QuantityPrint.text(row.zone().min().si(), row.zone().min().unit())
            + " to "
            + QuantityPrint.text(row.zone().max().si(), row.zone().max().unit())
            + " from the corner";
    String rated =
        ", rated " + QuantityPrint.text(designPa(row, type).orElseThrow(), site.pressureUnit());
    return row.side().value() == side
        ? "move the clamps to " + zone + rated
        : "clamp the " + Choice.word(row.side().value()) + " side, " + zone + rated;
  }

  private String others(Side side) {
    String names =
        Stream.of(site.job().modules(), site.layout().catalogue().modules())
            .flatMap(types -> types.all().stream())
            .filter(item -> carrying(item.value()).anyMatch(row -> row.side().value() == side))
            .map(item -> item.name().value())
            .distinct()
            .limit(MODULES_NAMED)
            .collect(Collectors.joining(" or "));
    return names.isEmpty()
        ? "use a module with a higher rating; no other known one has it"
        : "of the known modules " + names + " has a row that does";
  }

  private Stream<ClampZone> carrying(ModuleType type) {
    return type.clampZones().stream()
        .filter(row -> designPa(row, type).filter(rated -> rated >= demandPa).isPresent());
  }

  private Optional<Double> designPa(ClampZone row, ModuleType type) {
    double over =
        type.loadsAre().filter(are -> are.value() == LoadBasis.DESIGN).isPresent()
            ? 1
            : testOverDesign;
    return (up ? row.up() : row.down()).map(Pressure::pa).map(pa -> pa / over);
  }
}
