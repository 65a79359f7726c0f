package clampwise.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** The random place of a job at which a defect is planted, in words that defects are written in. */
final class Scene {
  private final Draft draft;
  private final Random random;
  private final Words words = new Words();

  private Scene(Draft draft, Random random) {
    this.draft = draft;
    this.random = random;
  }

  /** A place anywhere, or in the last field, which no other field is like. */
  static Words of(Draft draft, Random random, boolean last) {
    Scene scene = new Scene(draft, random);
    scene.field(last);
    scene.roof();
    scene.module();
    scene.seams();
    scene.words.put("r", random.nextInt(1000) / 1000.0);
    return scene.words;
  }

  private void field(boolean last) {
    List<String> fields =
        new ArrayList<>(Draft.mapping(draft.get("fields").orElseThrow()).keySet());
    int any = random.nextInt(fields.size());
    int number = last ? fields.size() - 1 : any;
    String field = fields.get(number);
    words.put("field", field).put("n", number).put("fields", fields.size());
    String other = fields.get((number + 1) % fields.size());
    words.put("oright", Block.of(draft, other).rightMm());
    words.put("plane", draft.text(Block.from(draft, field, "plane")));
    words.put("type", draft.text(Block.from(draft, field, "module")));
    words.put("attachment", draft.text(Block.from(draft, field, "attachment")));
    words.put("role", draft.has("parts.seam-clamps") ? "seam-clamps" : "rib-brackets");
    words.put("circuit", number == 0 ? "dc" : "dc 2").put("string", number == 0 ? "S" : "T");
  }

  private void roof() {
    String plane = "planes." + words.get("plane");
    double[] size = Lengths.plane(draft, (String) words.get("plane"));
    String panel = draft.text(plane + ".panel");
    words.put("width", size[0]).put("height", size[1]).put("panel", panel);
    words.put("first", Lengths.mm(draft, plane + ".seams.first"));
    words.put("minor", minor("panels." + panel + ".minor-ribs.0"));
    words.put("pitch", Lengths.mm(draft, "panels." + panel + ".pitch"));
  }

  private double minor(String path) {
    return draft.has(path) ? Lengths.mm(draft, path) : 0;
  }

  private void module() {
    Block block = Block.of(draft, (String) words.get("field"));
    int row = 1 + random.nextInt(block.rows());
    int column = 1 + random.nextInt(block.columns());
    words.put("x", block.xMm()).put("y", block.yMm());
    words.put("right", block.rightMm()).put("top", block.topMm());
    words.put("rows", block.rows()).put("columns", block.columns());
    words.put("across", block.acrossMm()).put("up", block.upMm());
    words.put("row", row).put("column", column);
    words.put("points", (block.rows() + 1) * block.columns() * 2);
    words.put("lap", block.bottomMm(row) - block.gapMm() / 2);
    words.put("mx", block.leftMm(column)).put("my", block.bottomMm(row));
  }

  /** The seams of the left and the right clamp of the module, and others round it. */
  private void seams() {
    double mx = words.number("mx");
    double zone = words.number("across") > words.number("up") ? 215 : 127;
    double left = seam(Math.rint(number(mx + zone)));
    words.put("left", left).put("k", Math.rint(number(left)));
    words.put("towards", left - mx > zone ? -1 : 1);
    words.put("inner", seam(Math.ceil(number(mx + 2 * zone + 5))));
    words.put("beside", seam(Math.floor(number(words.number("x") - 700))));
  }

  private double number(double alongMm) {
    return (alongMm - words.number("first")) / words.number("pitch");
  }

  private double seam(double number) {
    return words.number("first") + number * words.number("pitch");
  }
}
