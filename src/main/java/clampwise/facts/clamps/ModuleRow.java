package clampwise.facts.clamps;

import clampwise.facts.layout.PlacedModule;
import java.util.List;

/**
 * The modules of one row that move together along the eave.
 *
 * @param start where the designer set their start
 * @param number row number, counted up the slope
 * @param modules left to right
 */
record ModuleRow(RowStart start, int number, List<PlacedModule> modules) {

  /** Where the columns start [m along]. */
  double startM() {
    return start.spot().along().m();
  }

  /** Name of the row on its field. */
  String name() {
    return "row " + number + (start.column() == 1 ? "" : " from column " + start.column());
  }
}
