package clampwise.plan;

import clampwise.finding.Severity;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** How a style looks, for the legend. */
final class Sample {

  private static final Set<Style> SELF_EXPLAINING =
      EnumSet.of(
          Style.ROOF,
          Style.LEADER,
          Style.DIMENSION,
          Style.FRAME,
          Style.NORTH,
          Style.TEXT,
          Style.SMALL_TEXT,
          Style.ZONE_TEXT,
          Style.MODULE_TEXT,
          Style.HEADING,
          Style.TITLE,
          Style.WHITE_TEXT,
          Style.MARK_TEXT,
          Style.MODULES);

  private Sample() {}

  /** Whether a style has to be explained. */
  static boolean isExplained(Style style) {
    return !SELF_EXPLAINING.contains(style);
  }

  /**
   * Draws a sample.
   *
   * @param at its left end, at half its height
   */
  static void draw(Style style, Point at, Canvas canvas) {
    Point end = at.plus(7.5, 0);
    switch (style) {
      case ERROR_MARK -> canvas.add(small(Severity.ERROR, at));
      case WARNING_MARK -> canvas.add(small(Severity.WARNING, at));
      case NOTE_MARK -> canvas.add(small(Severity.NOTE, at));
      case ATTACHMENT_MID, ATTACHMENT_END, ATTACHMENT_NONE ->
          canvas.runs(
              style, List.of(ArrayDrawing.mark(style, at.plus(3.7, 0), 0.7)), About.NOTHING);
      case LUG -> canvas.runs(style, BondDrawing.earth(at.plus(3.7, -1.2)), About.NOTHING);
      case ZONE_ONE_UP, ZONE_TWO_UP, ZONE_THREE_UP, ZONE_FOUR_UP, ISLAND ->
          hatched(style, at, canvas);
      case CLEAR_PATH,
          OBSTACLE,
          KEEP_CLEAR,
          MODULE,
          CLAMP_ZONE,
          ERROR_AREA,
          WARNING_AREA,
          NOTE_AREA ->
          canvas.add(Drawn.box(style, at.plus(0, -1.2), end.plus(0, 1.2), About.NOTHING));
      default -> canvas.line(style, at, end);
    }
  }

  private static Drawn small(Severity severity, Point at) {
    return MarkDrawing.sign(severity, at.plus(3.7, 0), 1.5, About.NOTHING);
  }

  private static void hatched(Style style, Point at, Canvas canvas) {
    boolean wide = style == Style.ZONE_ONE_UP || style == Style.ZONE_THREE_UP;
    boolean crossed = style == Style.ZONE_THREE_UP || style == Style.ZONE_FOUR_UP;
    for (double along = 0; along < 6.5; along += wide ? 2.4 : 1.3) {
      double end = Math.min(along + 2.4, 7.5);
      canvas.line(style, at.plus(along, 1.2), at.plus(end, -1.2));
      if (crossed) {
        canvas.line(style, at.plus(along, -1.2), at.plus(end, 1.2));
      }
    }
  }
}
