package clampwise.facts.bonding;

import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The frames of a layout, by name and by place. */
final class Frames {

  private static final int[][] BESIDE = {{0, -1}, {0, 1}, {-1, 0}, {1, 0}};

  private final Map<String, PlacedModule> byName = new LinkedHashMap<>();
  private final Map<Cell, PlacedModule> byPlace = new HashMap<>();
  private final Map<String, FieldLayout> fields = new LinkedHashMap<>();

  private record Cell(String field, int row, int column) {}

  Frames(Layout layout) {
    for (FieldLayout field : layout.fields()) {
      fields.put(field.name(), field);
      field.modules().forEach(this::add);
    }
  }

  private void add(PlacedModule module) {
    byName.put(module.name(), module);
    byPlace.put(new Cell(module.field(), module.row(), module.column()), module);
  }

  /** All frames, in the order of the layout. */
  List<PlacedModule> all() {
    return new ArrayList<>(byName.values());
  }

  Optional<PlacedModule> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  Optional<FieldLayout> field(String name) {
    return Optional.ofNullable(fields.get(name));
  }

  /** Frames of the same field beside a frame: left, right, below, above. */
  Stream<PlacedModule> beside(PlacedModule frame) {
    return Stream.of(BESIDE).flatMap(step -> at(frame, step[0], step[1]).stream());
  }

  Optional<PlacedModule> rightOf(PlacedModule frame) {
    return at(frame, 0, 1);
  }

  Optional<PlacedModule> above(PlacedModule frame) {
    return at(frame, 1, 0);
  }

  private Optional<PlacedModule> at(PlacedModule frame, int up, int along) {
    Cell cell = new Cell(frame.field(), frame.row() + up, frame.column() + along);
    return Optional.ofNullable(byPlace.get(cell));
  }
}
