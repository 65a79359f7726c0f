package clampwise.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A rectangular field as it is drawn, in millimetres.
 *
 * @param acrossMm width of a module along the eave
 * @param upMm height of a module up the slope
 */
record Block(
    double xMm, double yMm, int rows, int columns, double acrossMm, double upMm, double gapMm) {

  static Block of(Draft draft, String field) {
    String own = "fields." + field + ".";
    String module = "modules." + draft.text(from(draft, field, "module")) + ".";
    boolean portrait = draft.text(from(draft, field, "orientation")).equals("portrait");
    double longMm = Lengths.mm(draft, module + "length");
    double shortMm = Lengths.mm(draft, module + "width");
    return new Block(
        Lengths.mm(draft, own + "block.at.0"),
        Lengths.mm(draft, own + "block.at.1"),
        Integer.parseInt(draft.text(own + "block.rows")),
        Integer.parseInt(draft.text(own + "block.columns")),
        portrait ? shortMm : longMm,
        portrait ? longMm : shortMm,
        Lengths.mm(draft, from(draft, field, "gap")));
  }

  /** Where a key of a field is written: in it, or in the field it is like. */
  static String from(Draft draft, String field, String key) {
    String own = "fields." + field + ".";
    return draft.has(own + key) || !draft.has(own + "like")
        ? own + key
        : from(draft, draft.text(own + "like"), key);
  }

  /** The same paths, those of fields where they are written. */
  static List<String> written(Draft draft, List<String> paths) {
    List<String> written = new ArrayList<>();
    for (String path : paths) {
      String[] steps = path.split("\\.", 3);
      boolean own = steps.length < 3 || !steps[0].equals("fields");
      written.add(own ? path : from(draft, steps[1], steps[2]));
    }
    return written;
  }

  double leftMm(int column) {
    return xMm + (column - 1) * (acrossMm + gapMm);
  }

  double bottomMm(int row) {
    return yMm + (row - 1) * (upMm + gapMm);
  }

  double rightMm() {
    return leftMm(columns) + acrossMm;
  }

  double topMm() {
    return bottomMm(rows) + upMm;
  }

  /** Two attachments on each module edge, each at the seam nearest the middle of its clamp zone. */
  List<Object> points(double firstMm, double pitchMm, double zoneMm) {
    List<Object> points = new ArrayList<>();
    for (int line = 0; line <= rows; line++) {
      double upMm = line == 0 ? yMm : line == rows ? topMm() : bottomMm(line + 1) - gapMm / 2;
      for (int column = 1; column <= columns; column++) {
        double left = leftMm(column);
        points.add(point(nearest(left + zoneMm, firstMm, pitchMm), upMm));
        points.add(point(nearest(left + acrossMm - zoneMm, firstMm, pitchMm), upMm));
      }
    }
    return points;
  }

  private static double nearest(double alongMm, double firstMm, double pitchMm) {
    return firstMm + Math.rint((alongMm - firstMm) / pitchMm) * pitchMm;
  }

  private static Object point(double alongMm, double upMm) {
    Map<String, Object> point = new LinkedHashMap<>();
    point.put("at", new ArrayList<>(List.of(text(alongMm), text(upMm))));
    return point;
  }

  static String text(double mm) {
    return Math.round(mm * 1e6) / 1e6 + " mm";
  }
}
