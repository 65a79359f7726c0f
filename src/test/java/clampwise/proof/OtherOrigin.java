package clampwise.proof;

import java.util.ArrayList;
import java.util.List;

/** Measures planes from another corner of the drawing. */
final class OtherOrigin implements Change {
  private static final double ALONG_MM = 3250;
  private static final double UP_MM = 1175;

  @Override
  public Draft of(Draft draft) {
    Draft moved = draft.copy();
    for (String plane : List.copyOf(Draft.mapping(draft.get("planes").orElseThrow()).keySet())) {
      move(moved, plane);
    }
    return moved;
  }

  private static void move(Draft draft, String plane) {
    Geometry all = new Geometry(draft, plane, x -> x + ALONG_MM, y -> y + UP_MM);
    String own = "planes." + plane + ".";
    List<Object> corners = new ArrayList<>();
    for (Object corner : Geometry.corners(draft, plane)) {
      var copy = Draft.mapping(Draft.copy(corner));
      copy.put("at", all.moved(Draft.list(copy.get("at")), 0));
      corners.add(copy);
    }
    draft.set(own + "size", "~");
    draft.set(own + "edges", "~");
    draft.set(own + "outline", corners);
    shift(draft, own + "seams.first", ALONG_MM);
    shift(draft, own + "purlins.first", UP_MM);
    all.list(own + "seams.surveyed", true);
    all.list(own + "expansion-joints", true);
    all.list(own + "end-laps", false);
    all.things(false);
    for (String field : all.fields()) {
      all.spot("fields." + field + ".block.at");
      all.points(field);
    }
  }

  private static void shift(Draft draft, String path, double byMm) {
    if (draft.has(path)) {
      draft.set(path, Block.text(Lengths.mm(draft, path) + byMm));
    }
  }
}
