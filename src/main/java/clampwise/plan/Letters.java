package clampwise.plan;

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
