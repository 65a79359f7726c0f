package clampwise.facts.clamps;

import clampwise.calc.ClampedEdge;
import clampwise.calc.SeamPhase;
import clampwise.facts.layout.LineWord;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Choice;
import clampwise.job.Field.Orientation;
import clampwise.job.ModuleType;
import clampwise.job.ModuleType.ClampZone;
import clampwise.job.ModuleType.Side;
import clampwise.job.Named;
import clampwise.job.Quantity.Pressure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What would help a row for which no start does: a another way round or module. */
final class PhaseAlternatives {

  private static final int MODULES_NAMED = 3;

  private final FieldCase asked;
  private final ZoneSeams seams;
  private final RowStarts starts;

  PhaseAlternatives(FieldCase asked, ZoneSeams seams, RowStarts starts) {
    this.asked = asked;
    this.seams = seams;
    this.starts = starts;
  }

  String text(ModuleRow row) {
    List<String> helping =
        Stream.of(otherOrientation(row), otherModules(row)).flatMap(Optional::stream).toList();
    String text =
        helping.isEmpty()
            ? "nor do the other orientation or another known module: change the gap, or the"
                + " attachment to one that does not depend on the "
                + lines()
            : "what would: " + String.join("; ", helping);
    return text + weaker(row).map(zone -> "; " + zone).orElse("");
  }

  /** A zone that the seams reach, but that does not carry the design load. */
  private Optional<String> weaker(ModuleRow row) {
    PlacedModule module = row.modules().get(0);
    List<ClampZone> used = seams.zones(module).rows();
    return UsableZones.ofSide(module).stream()
        .filter(zone -> !used.contains(zone))
        .filter(zone -> holdsAll(row, new UsableZones(List.of(zone)), module.alongM()))
        .max(Comparator.comparingDouble(zone -> zone.down().map(Pressure::pa).orElse(0.0)))
        .map(
            zone ->
                "the "
                    + lines()
                    + " reach "
                    + RowPhases.text(zone.zone())
                    + ", but "
                    + rating(zone, module));
  }

  private String lines() {
    return LineWord.of(asked.plane().panel()).many();
  }

  private String rating(ClampZone zone, PlacedModule module) {
    return asked
        .field()
        .field()
        .designLoad()
        .flatMap(load -> RatedLoads.shortfall(zone, load, seams.factor(module.type())))
        .map(shortfall -> "that row " + shortfall)
        .orElse("that row does not carry the design load");
  }

  private Optional<String> otherOrientation(ModuleRow row) {
    PlacedModule module = row.modules().get(0);
    Orientation other =
        module.orientation() == Orientation.LANDSCAPE
            ? Orientation.PORTRAIT
            : Orientation.LANDSCAPE;
    Side side = other == Orientation.LANDSCAPE ? Side.LONG : Side.SHORT;
    UsableZones zones = seams.zones(module.type(), side);
    return holdsAll(row, zones, alongM(module.type(), side))
        ? Optional.of(Choice.word(other) + " modules")
        : Optional.empty();
  }

  private Optional<String> otherModules(ModuleRow row) {
    Side side = row.modules().get(0).clampedSide();
    String names =
        Stream.of(asked.layout().job().modules(), asked.layout().catalogue().modules())
            .flatMap(types -> types.all().stream())
            .filter(item -> holdsAll(row, seams.zones(item.value(), side), alongM(item, side)))
            .map(item -> item.name().value())
            .distinct()
            .limit(MODULES_NAMED)
            .collect(Collectors.joining(" or "));
    return names.isEmpty() ? Optional.empty() : Optional.of("module " + names);
  }

  private static double alongM(Named.Item<ModuleType> item, Side side) {
    return alongM(item.value(), side);
  }

  private static double alongM(ModuleType type, Side side) {
    return (side == Side.LONG ? type.length() : type.width()).m();
  }

  private boolean holdsAll(ModuleRow row, UsableZones zones, double alongM) {
    return ZoneSeams.edges(zones, alongM).stream().anyMatch(edge -> holdsAll(row, edge));
  }

  private boolean holdsAll(ModuleRow row, ClampedEdge edge) {
    int all = row.modules().size();
    SeamPhase phase = SeamPhase.uniform(starts.under(row), edge, asked.field().columnGapM(), all);
    return starts.best(phase, row.startM()).filter(best -> best.modules() == all).isPresent();
  }
}
