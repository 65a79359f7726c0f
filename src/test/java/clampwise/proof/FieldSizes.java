package clampwise.proof;

import java.util.List;
import java.util.Random;

/** Draws where the fields of a clean job lie, how large they are, and what else a seed decides. */
final class FieldSizes {
  private static final double LONG_MM = 1722;
  private static final double SHORT_MM = 1134;
  private static final double GAP_MM = 12;
  private static final double INCH_MM = 25.4;

  private final JobKind kind;
  private final Random random;
  private final boolean second;
  private final boolean portrait;
  private final Words words = new Words();

  FieldSizes(JobKind kind, Random random, boolean second) {
    this.kind = kind;
    this.random = random;
    this.second = second;
    // Crests lie so close that any module side finds one in its clamp zone; seams and ribs do not.
    this.portrait = kind.isOf("wave") && random.nextBoolean();
  }

  Words words() {
    words.put("u", kind.isImperial() ? "in" : "mm");
    words.put("attachment", kind.isOf("seam") ? "SC-1" : "RB-1");
    words.put("orientation", portrait ? "portrait" : "landscape");
    words.put("side", portrait ? "short" : "long");
    words.put("place", random.nextInt(100));
    codes();
    fields();
    return words;
  }

  private void codes() {
    words.put("exposure", pick("B", "C"));
    words.put("snow", pick(0, 10, 15, 20));
    String year = pick("2018", "2021", "2024");
    words.put("ifc", "IFC " + year).put("ifcrules", "ifc-" + year);
    words.put("nec", pick("NEC 2017", "NEC 2020", "NEC 2023"));
  }

  private void fields() {
    boolean large = kind.size() == JobKind.Size.LARGE;
    int rows = portrait ? between(2, 3) : large ? between(8, 10) : between(2, 4);
    int columns = large ? between(12, 14) : between(2, 4);
    double leftMm = (kind.has("hip-metric") ? 7600 : 2700) + 10 * random.nextInt(140);
    double bottomMm = 2200 + 10 * random.nextInt(40);
    field("a", leftMm, bottomMm, rows, columns);
    double besideMm = leftMm + columns * (acrossMm() + GAP_MM) + 2700 + 10 * random.nextInt(40);
    int more = second ? between(2, columns) : 0;
    int moreRows = second ? between(2, rows) : 0;
    field("b", besideMm, bottomMm + 10 * random.nextInt(20), moreRows, more);
    words.put("bplane", kind.has("fire-house") ? pick("south", "north") : "south");
    words.put("modules", rows * columns + moreRows * more);
    words.put("attachments", (rows + 1) * columns * 2 + (second ? (moreRows + 1) * more * 2 : 0));
    words.put("ends", 4 * (columns + more));
  }

  private void field(String name, double leftMm, double bottomMm, int rows, int columns) {
    words.put(name + "x", written(leftMm)).put(name + "y", written(bottomMm));
    words.put(name + "rows", rows).put(name + "columns", columns);
  }

  private double acrossMm() {
    return portrait ? SHORT_MM : LONG_MM;
  }

  /** Whole inches or whole centimetres, as one draws. */
  private double written(double mm) {
    return kind.isImperial() ? Math.rint(mm / INCH_MM) : mm;
  }

  private int between(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  @SafeVarargs
  private <T> T pick(T... choices) {
    return List.of(choices).get(random.nextInt(choices.length));
  }
}
