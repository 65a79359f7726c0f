package clampwise.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/** Moves everything on one plane of a draft. */
final class Geometry {
  private final Draft draft;
  private final String plane;
  private final DoubleUnaryOperator along;
  private final DoubleUnaryOperator up;

  /** Along the eave and up the slope, in millimetres. */
  Geometry(Draft draft, String plane, DoubleUnaryOperator along, DoubleUnaryOperator up) {
    this.draft = draft;
    this.plane = plane;
    this.along = along;
    this.up = up;
  }

  List<String> fields() {
    return Draft.mapping(draft.get("fields").orElseThrow()).keySet().stream()
        .filter(field -> draft.text(Block.from(draft, field, "plane")).equals(plane))
        .toList();
  }

  void spot(String path) {
    draft.set(path, moved(Draft.list(draft.get(path).orElseThrow()), 0));
  }

  List<Object> moved(List<Object> spot, double wideMm) {
    double xMm = along.applyAsDouble(Lengths.mm((String) spot.get(0)) + wideMm);
    double yMm = up.applyAsDouble(Lengths.mm((String) spot.get(1)));
    return new ArrayList<>(List.of(Block.text(xMm), Block.text(yMm)));
  }

  /** Moves lengths of a list, such as surveyed seams. */
  void list(String path, boolean isAlong) {
    if (draft.has(path)) {
      List<Object> moved = new ArrayList<>();
      for (Object each : Draft.list(draft.get(path).orElseThrow())) {
        double mm = Lengths.mm((String) each);
        moved.add(Block.text((isAlong ? along : up).applyAsDouble(mm)));
      }
      draft.set(path, moved);
    }
  }

  void points(String field) {
    String path = "fields." + field + ".attach.points";
    if (draft.has(path)) {
      int count = Draft.list(draft.get(path).orElseThrow()).size();
      for (int i = 0; i < count; i++) {
        spot(path + "." + i + ".at");
      }
    }
  }

  /** Moves what stands on the plane; the far end of what has a width becomes its near one. */
  void things(boolean mirrored) {
    String path = "planes." + plane + ".obstructions";
    for (String thing : keys(path)) {
      String at = path + "." + thing + ".at";
      double wideMm = mirrored ? width(path + "." + thing + ".size") : 0;
      draft.set(at, moved(Draft.list(draft.get(at).orElseThrow()), wideMm));
    }
    for (String opening : keys("fire.escape-openings")) {
      String own = "fire.escape-openings." + opening;
      if (draft.text(own + ".plane").equals(plane)) {
        double wideMm = mirrored ? Lengths.mm(draft, own + ".width") : 0;
        draft.set(own + ".at", moved(Draft.list(draft.get(own + ".at").orElseThrow()), wideMm));
      }
    }
  }

  private double width(String size) {
    return draft.has(size) ? Lengths.mm(draft.text(size).split(" x ")[0]) : 0;
  }

  private List<String> keys(String path) {
    return draft.has(path)
        ? List.copyOf(Draft.mapping(draft.get(path).orElseThrow()).keySet())
        : List.of();
  }

  /** The corners of the plane, whether drawn as a size or as an outline. */
  static List<Object> corners(Draft draft, String plane) {
    String own = "planes." + plane + ".";
    if (draft.has(own + "outline")) {
      return Draft.list(draft.get(own + "outline").orElseThrow());
    }
    double[] size = Lengths.plane(draft, plane);
    return new ArrayList<>(
        List.of(
            corner(0, 0, edge(draft, own, "bottom", "eave")),
            corner(size[0], 0, edge(draft, own, "right", "rake")),
            corner(size[0], size[1], edge(draft, own, "top", "ridge")),
            corner(0, size[1], edge(draft, own, "left", "rake"))));
  }

  private static String edge(Draft draft, String plane, String side, String usual) {
    String path = plane + "edges." + side;
    return draft.has(path) ? draft.text(path) : usual;
  }

  private static Object corner(double xMm, double yMm, String edge) {
    Map<String, Object> corner = new LinkedHashMap<>();
    corner.put("at", new ArrayList<>(List.of(Block.text(xMm), Block.text(yMm))));
    corner.put("edge", edge);
    return corner;
  }
}
