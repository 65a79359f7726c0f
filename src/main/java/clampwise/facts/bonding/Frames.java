package clampwise.facts.bonding;

import clampwise.calc.Snap;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The frames of a layout, by name and by place. */
final class Frames {

  private final Map<String, PlacedModule> byName = new LinkedHashMap<>();
  private final Map<Cell, PlacedModule> byPlace = new HashMap<>();
  private final Map<Cell, List<PlacedModule>> byColumn = new HashMap<>();
  private final Map<String, FieldLayout> fields = new LinkedHashMap<>();

  private record Cell(String field, int row, int column) {}

  private final double reachM;

  /** Frames without a thought of what would tie them. */
  Frames(Layout layout) {
    this(layout, OptionalDouble.empty());
  }

  /** Frames that jumpers of some length would tie; of any length where it is not given. */
  Frames(Layout layout, OptionalDouble jumperLengthM) {
    this.reachM = jumperLengthM.orElse(Double.POSITIVE_INFINITY);
    for (FieldLayout field : layout.fields()) {
      fields.put(field.name(), field);
      field.modules().forEach(this::add);
    }
  }

  private void add(PlacedModule module) {
    byName.put(module.name(), module);
    byPlace.put(new Cell(module.field(), module.row(), module.column()), module);
    Cell column = new Cell(module.field(), 0, module.column());
    byColumn.computeIfAbsent(column, unseen -> new ArrayList<>()).add(module);
  }

  /** All frames, in the order of the layout. */
  List<PlacedModule> all() {
    return new ArrayList<>(byName.values());
  }

  /** All frames, field by field, each field column by column. */
  List<PlacedModule> byColumn() {
    List<PlacedModule> sorted = new ArrayList<>();
    for (FieldLayout field : fields.values()) {
      field.modules().stream().sorted(Tie.BY_PLACE).forEach(sorted::add);
    }
    return sorted;
  }

  Optional<PlacedModule> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  Collection<FieldLayout> fields() {
    return fields.values();
  }

  Optional<FieldLayout> field(String name) {
    return Optional.ofNullable(fields.get(name));
  }

  /** Frames of the same field that a jumper reaches: left, right, below, above. */
  Stream<PlacedModule> beside(PlacedModule frame) {
    return Stream.of(inColumn(frame, -1), inColumn(frame, 1), at(frame, -1, 0), at(frame, 1, 0))
        .flatMap(Optional::stream)
        .filter(other -> isNear(frame, other));
  }

  /** Free columns start where they like: the one of the same row need not be the one beside. */
  private Optional<PlacedModule> inColumn(PlacedModule frame, int along) {
    Optional<PlacedModule> sameRow = at(frame, 0, along).filter(other -> isNear(frame, other));
    Cell column = new Cell(frame.field(), 0, frame.column() + along);
    return sameRow.or(
        () ->
            byColumn.getOrDefault(column, List.of()).stream()
                .filter(other -> isNear(frame, other))
                .findFirst());
  }

  /** Whether two frames face each other, with no room for a module and within a jumper's length. */
  private boolean isNear(PlacedModule one, PlacedModule other) {
    double alongM = Math.max(one.leftM(), other.leftM()) - Math.min(one.rightM(), other.rightM());
    double upM = Math.max(one.bottomM(), other.bottomM()) - Math.min(one.topM(), other.topM());
    double mostM = Math.min(one.alongM(), one.upM());
    double apartM = Math.max(alongM, upM);
    return apartM < mostM && Snap.m(apartM) <= reachM && Math.min(alongM, upM) < 0;
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
