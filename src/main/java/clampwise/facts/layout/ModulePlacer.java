package clampwise.facts.layout;

import clampwise.calc.Snap;
import clampwise.job.Field;
import clampwise.job.Field.Orientation;
import clampwise.job.ModuleType;
import clampwise.job.Named;
import clampwise.job.Text;
import clampwise.source.Nearest;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Places the modules of a field. Within a column the placed module is the gauge of the next: a
 * module of another size shifts those above it.
 */
final class ModulePlacer {

  private record Kind(String name, ModuleType type) {}

  private final Named.Item<Field> field;
  private final Kind usual;
  private final double rowGapM;
  private final PartFinder parts;
  private final Problems problems;

  ModulePlacer(
      Named.Item<Field> field,
      ModuleType type,
      double rowGapM,
      PartFinder parts,
      Problems problems) {
    this.field = field;
    this.usual = new Kind(field.value().module().value(), type);
    this.rowGapM = rowGapM;
    this.parts = parts;
    this.problems = problems;
  }

  /** All modules, by column, then by row. */
  List<PlacedModule> place(List<ColumnPlan> plans) {
    Map<String, Kind> others = others();
    List<PlacedModule> placed = new ArrayList<>();
    plans.forEach(plan -> placeColumn(plan, others, placed));
    reportUnplaced(placed);
    return List.copyOf(placed);
  }

  /** Extent of a module along the eave [m]. */
  static double alongM(ModuleType type, Orientation orientation) {
    return orientation == Orientation.LANDSCAPE ? type.length().m() : type.width().m();
  }

  /** Extent of a module up the slope [m]. */
  static double upM(ModuleType type, Orientation orientation) {
    return orientation == Orientation.LANDSCAPE ? type.width().m() : type.length().m();
  }

  private Orientation orientation() {
    return field.value().orientation().value();
  }

  private Map<String, Kind> others() {
    Map<String, Kind> others = new HashMap<>();
    for (Named.Item<Text> other : field.value().otherModules().all()) {
      Optional<ModuleType> type = parts.module(other.value());
      type.ifPresent(known -> others.put(place(other), new Kind(other.value().value(), known)));
    }
    return others;
  }

  private String place(Named.Item<Text> other) {
    return PlaceName.within(field.name().value(), other.name().value());
  }

  private void placeColumn(ColumnPlan plan, Map<String, Kind> others, List<PlacedModule> placed) {
    double usualUpM = upM(usual.type(), orientation());
    double shiftedM = 0;
    for (int row = 1; row <= plan.places(); row++) {
      if (plan.empty().contains(row)) {
        continue;
      }
      Kind kind = others.getOrDefault(PlaceName.of(row, plan.number()), usual);
      double bottomM = Snap.m(plan.bottomM() + (row - 1) * (usualUpM + rowGapM) + shiftedM);
      PlacedModule module = module(plan, row, kind, bottomM);
      placed.add(module);
      shiftedM += module.upM() - usualUpM;
    }
  }

  private PlacedModule module(ColumnPlan plan, int row, Kind kind, double bottomM) {
    return new PlacedModule(
        PlaceName.module(field.name().value(), row, plan.number()),
        field.name().value(),
        row,
        plan.number(),
        kind.name(),
        kind.type(),
        orientation(),
        plan.leftM(),
        bottomM,
        alongM(kind.type(), orientation()),
        upM(kind.type(), orientation()),
        plan.at());
  }

  private void reportUnplaced(List<PlacedModule> placed) {
    if (field.value().otherModules().isEmpty()) {
      return;
    }
    Set<String> places =
        placed.stream()
            .map(module -> PlaceName.of(module.row(), module.column()))
            .collect(Collectors.toSet());
    for (Named.Item<Text> other : field.value().otherModules().all()) {
      if (!places.contains(place(other))) {
        problems.add(
            new Problem(
                other.name().at(),
                other.name() + ", which is no module of this field",
                "a module such as R2C3",
                Nearest.to(place(other), places)));
      }
    }
  }
}
