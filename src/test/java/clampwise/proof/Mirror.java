package clampwise.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Draws the roof as seen in a mirror: left is right. */
final class Mirror implements Change {
  private static final Pattern MODULE = Pattern.compile("\\b([A-Z])\\.R(\\d+)C(\\d+)");

  @Override
  public Draft of(Draft draft) {
    Draft mirrored = Paths.texts(draft, (path, text) -> modules(draft, text));
    for (String plane : List.copyOf(Draft.mapping(draft.get("planes").orElseThrow()).keySet())) {
      mirror(draft, mirrored, plane);
    }
    return mirrored;
  }

  private static void mirror(Draft draft, Draft mirrored, String plane) {
    double width = Lengths.plane(draft, plane)[0];
    Geometry all = new Geometry(mirrored, plane, x -> width - x, y -> y);
    String own = "planes." + plane + ".";
    outline(mirrored, plane, width);
    seams(draft, mirrored, own, width);
    all.list(own + "expansion-joints", true);
    all.things(true);
    for (String field : all.fields()) {
      Block block = Block.of(draft, field);
      mirrored.set("fields." + field + ".block.at.0", Block.text(width - block.rightMm()));
      all.points(field);
    }
  }

  /** Corners run on anticlockwise, so that they come in the other order. */
  private static void outline(Draft draft, String plane, double width) {
    List<Object> corners = Geometry.corners(draft, plane);
    List<Object> turned = new ArrayList<>();
    Geometry all = new Geometry(draft, plane, x -> width - x, y -> y);
    for (int i = corners.size() - 1; i >= 0; i--) {
      var corner = Draft.mapping(Draft.copy(corners.get(i)));
      int before = (i + corners.size() - 1) % corners.size();
      corner.put("at", all.moved(Draft.list(corner.get("at")), 0));
      corner.put("edge", Draft.mapping(corners.get(before)).get("edge"));
      turned.add(corner);
    }
    draft.set("planes." + plane + ".size", "~");
    draft.set("planes." + plane + ".edges", "~");
    draft.set("planes." + plane + ".outline", turned);
  }

  private static void seams(Draft draft, Draft mirrored, String plane, double width) {
    double first = Lengths.mm(draft, plane + "seams.first");
    double pitch = Lengths.mm(draft, "panels." + draft.text(plane + "panel") + ".pitch");
    String surveyed = plane + "seams.surveyed";
    double count =
        draft.has(surveyed)
            ? Draft.list(draft.get(surveyed).orElseThrow()).size() - 1
            : Math.floor((width - first) / pitch + 1e-9);
    mirrored.set(plane + "seams.first", Block.text(width - first - count * pitch));
    if (draft.has(surveyed)) {
      List<Object> positions = new ArrayList<>();
      for (Object each : Draft.list(draft.get(surveyed).orElseThrow())) {
        positions.add(0, Block.text(width - Lengths.mm((String) each)));
      }
      mirrored.set(surveyed, positions);
    }
  }

  private static String modules(Draft draft, String text) {
    Matcher module = MODULE.matcher(text);
    return module.replaceAll(
        found -> {
          int columns = Block.of(draft, found.group(1)).columns();
          int column = columns + 1 - Integer.parseInt(found.group(3));
          return found.group(1) + ".R" + found.group(2) + "C" + column;
        });
  }

  @Override
  public String renamed(Draft draft, String subject) {
    return shortened(subject);
  }

  /** Module columns, edges and seams have other numbers; their fields and planes do not. */
  @Override
  public String shortened(String subject) {
    return subject
        .replaceAll("\\b([A-Z])\\.R\\d+C\\d+", "$1")
        .replaceAll("\\bR\\d+C\\d+", "module")
        .replaceAll("edge \\d+", "edge")
        .replaceAll("(seam|rib|crest|point|column|line) \\d+", "$1");
  }
}
