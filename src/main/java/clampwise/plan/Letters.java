package clampwise.plan;

import org.locationtech.jts.geom.Envelope;

/** How much room words take on a sheet, near enough to keep them apart. */
final class Letters {

  private static final double WIDTH_OF_HEIGHT = 0.6;
  private static final double WIDE_OF_HEIGHT = 1.1;
  private static final int FIRST_WIDE = 0x1100;

  private Letters() {}

  /** Width of some words [mm]. */
  static double widthMm(String text, Style style) {
    double heights =
        text.codePoints()
            .mapToDouble(code -> code < FIRST_WIDE ? WIDTH_OF_HEIGHT : WIDE_OF_HEIGHT)
            .sum();
    return heights * style.letterMm();
  }

  /** The room that words take on a sheet [mm]. */
  static Envelope box(Drawn.Words words) {
    double width = widthMm(words.text(), words.style());
    double before =
        switch (words.anchor()) {
          case START -> 0;
          case MIDDLE -> width / 2;
          case END -> width;
        };
    double turn = Math.toRadians(words.turnDeg());
    double height = words.style().letterMm();
    Envelope box = new Envelope();
    for (double along : new double[] {-before, width - before}) {
      for (double up : new double[] {0, height}) {
        box.expandToInclude(
            words.at().xMm() + along * Math.cos(turn) - up * Math.sin(turn),
            words.at().yMm() - along * Math.sin(turn) - up * Math.cos(turn));
      }
    }
    return box;
  }

  /** The words, cut off where there is no room for them. */
  static String fitted(String text, Style style, double roomMm) {
    if (widthMm(text, style) <= roomMm) {
      return text;
    }
    StringBuilder kept = new StringBuilder();
    int[] codes = text.codePoints().toArray();
    for (int i = 0; i < codes.length && widthMm(kept + "…", style) < roomMm; i++) {
      kept.appendCodePoint(codes[i]);
    }
    kept.setLength(Math.max(0, kept.offsetByCodePoints(kept.length(), kept.isEmpty() ? 0 : -1)));
    return kept + "…";
  }
}
