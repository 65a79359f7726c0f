package clampwise.facts.clamps;

import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The modules of one row that move together along the eave.
 *
 * @param start where the designer set their start
 * @param number row number, counted up the slope
 * @param modules left to right
 */
record ModuleRow(RowStart start, int number, List<PlacedModule> modules) {

  /** The rows of a field, those of one start after those of another. */
  static List<ModuleRow> of(FieldLayout field) {
    NavigableMap<Integer, RowStart> written = RowStart.of(field);
    List<ModuleRow> rows = new ArrayList<>();
    Map<Integer, Map<Integer, List<PlacedModule>>> byStart =
        field.modules().stream()
            .filter(module -> written.floorKey(module.column()) != null)
            .collect(
                Collectors.groupingBy(
                    module -> Objects.requireNonNull(written.floorKey(module.column())),
                    TreeMap::new,
                    Collectors.groupingBy(PlacedModule::row, TreeMap::new, Collectors.toList())));
    byStart.forEach(
        (column, byRow) ->
            byRow.forEach(
                (row, modules) ->
                    rows.add(
                        new ModuleRow(Objects.requireNonNull(written.get(column)), row, modules))));
    return rows;
  }

  /** Where the columns start [m along]. */
  double startM() {
    return start.spot().along().m();
  }

  /** Name of the row on its field. */
  String name() {
    return "row " + number + (start.column() == 1 ? "" : " from column " + start.column());
  }
}
