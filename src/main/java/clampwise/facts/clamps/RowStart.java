package clampwise.facts.clamps;

import clampwise.facts.layout.FieldLayout;
import clampwise.job.Field;
import clampwise.job.Spot;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Where the designer set the start of some columns that stand side by side.
 *
 * @param column number of the first of them
 * @param spot the start as written
 */
record RowStart(int column, Spot spot) {

  /** The starts of a field by the number of their first column. */
  static NavigableMap<Integer, RowStart> of(FieldLayout layout) {
    NavigableMap<Integer, RowStart> starts = new TreeMap<>();
    Field field = layout.field();
    field.block().ifPresent(block -> starts.put(1, new RowStart(1, block.at())));
    List<Field.Column> columns = field.columns();
    for (int i = 0; i < columns.size(); i++) {
      int column = field.block().map(block -> block.columns().value()).orElse(0) + i + 1;
      columns.get(i).at().ifPresent(spot -> starts.put(column, new RowStart(column, spot)));
    }
    return starts;
  }
}
