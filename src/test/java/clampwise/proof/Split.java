package clampwise.proof;

import java.util.LinkedHashMap;
import java.util.Map;

/** Writes the last field as two that lie side by side. */
final class Split implements Change {
  private static final String RIGHT = "Z";

  @Override
  public Draft of(Draft draft) {
    Draft split = draft.copy();
    String field = last(draft);
    Block block = Block.of(draft, field);
    int left = block.columns() / 2;
    String own = "fields." + field + ".block.columns";
    Map<String, Object> right = new LinkedHashMap<>();
    right.put("like", field);
    split.set("fields." + RIGHT, right);
    split.set("fields.Z.block.at", Draft.value(spot(block, left + 1)));
    split.set("fields.Z.block.rows", "" + block.rows());
    split.set("fields.Z.block.columns", "" + (block.columns() - left));
    split.set(own, "" + left);
    join(split, field, left);
    return split;
  }

  /** Whether a job has nothing that names modules or counts columns of its last field. */
  static boolean canSplit(Draft draft) {
    String own = "fields." + last(draft) + ".";
    return !draft.has("electrical")
        && !draft.has(own + "other-modules")
        && !draft.has(own + "attach.points")
        && !draft.has("fields.A.column-gap")
        && !draft.has(own + "column-gap")
        && Block.of(draft, last(draft)).columns() > 1;
  }

  /** The jumper between the halves, and those within the right one. */
  private static void join(Draft split, String field, int left) {
    Map<String, Object> between = new LinkedHashMap<>();
    between.put("from", field + ".R1C" + left);
    between.put("to", RIGHT + ".R1C1");
    Map<String, Object> within = new LinkedHashMap<>();
    within.put("field", RIGHT);
    split.set("bonding.jumpers.+", between);
    split.set("bonding.jumpers.+", within);
  }

  private static String spot(Block block, int column) {
    return "[" + Block.text(block.leftMm(column)) + ", " + Block.text(block.yMm()) + "]";
  }

  private static String last(Draft draft) {
    String last = "";
    for (String field : Draft.mapping(draft.get("fields").orElseThrow()).keySet()) {
      last = field;
    }
    return last;
  }

  @Override
  public String renamed(Draft draft, String subject) {
    return shortened(subject.replaceAll("\\b" + last(draft) + "\\b", RIGHT));
  }

  /** One half may be all that a finding is about; both count as the field that they were. */
  @Override
  public String shortened(String subject) {
    return subject
        .replaceAll("\\bR\\d+C\\d+", "module")
        .replaceAll("(?<=fields\\.|field |/ )[A-Y](?=\\b)", RIGHT)
        .replaceAll("(edge|seam|rib|crest|point|column|line) \\d+", "$1");
  }
}
