package clampwise.facts.loads;

import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.ModuleIndex;
import clampwise.facts.layout.Neighbour.Side;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The modules of a plane by row and column of their field, and by place. */
final class PlaneModules {

  private record Cell(String field, int column, int row) {}

  private final Map<Cell, PlacedModule> cells = new HashMap<>();
  private final ModuleIndex index;

  PlaneModules(PlaneLayout plane) {
    this.index = ModuleIndex.of(plane);
    for (FieldLayout field : plane.fields()) {
      for (PlacedModule module : field.modules()) {
        cells.put(new Cell(module.field(), module.column(), module.row()), module);
      }
    }
  }

  /** Finds modules by place. */
  ModuleIndex index() {
    return index;
  }

  /** The module next in the same row or column of a field, if there is one. */
  Optional<PlacedModule> next(PlacedModule module, Side side) {
    return Optional.ofNullable(cells.get(cell(module, side)));
  }

  private static Cell cell(PlacedModule module, Side side) {
    return switch (side) {
      case LEFT -> new Cell(module.field(), module.column() - 1, module.row());
      case RIGHT -> new Cell(module.field(), module.column() + 1, module.row());
      case BELOW -> new Cell(module.field(), module.column(), module.row() - 1);
      case ABOVE -> new Cell(module.field(), module.column(), module.row() + 1);
    };
  }
}
