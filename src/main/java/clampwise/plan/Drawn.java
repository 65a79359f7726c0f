package clampwise.plan;

import java.util.List;

/** Something drawn on a sheet, in millimetres of the sheet. */
public sealed interface Drawn {

  /** How it is drawn. */
  Style style();

  /** What it is about. */
  About about();

  /** A run of straight lines; closed ones have an inside. */
  record Run(List<Point> points, boolean closed) {}

  /** Straight lines; where they are closed, what lies within an odd number of them is filled. */
  record Lines(Style style, List<Run> runs, About about) implements Drawn {}

  /** A circle. */
  record Disc(Style style, Point centre, double radiusMm, About about) implements Drawn {}

  /**
   * Words on one line.
   *
   * @param at where the base line starts, ends or has its middle
   * @param turnDeg turned anticlockwise [deg]
   */
  record Words(Style style, Point at, String text, Anchor anchor, double turnDeg, About about)
      implements Drawn {}

  /** Which point of some words is given. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** One straight line. */
  static Lines line(Style style, Point from, Point to) {
    return new Lines(style, List.of(new Run(List.of(from, to), false)), About.NOTHING);
  }

  /** A rectangle with its sides along the sheet's. */
  static Lines box(Style style, Point corner, Point opposite, About about) {
    Point right = new Point(opposite.xMm(), corner.yMm());
    Point below = new Point(corner.xMm(), opposite.yMm());
    return new Lines(style, List.of(new Run(List.of(corner, right, opposite, below), true)), about);
  }

  /** Words that start at a point. */
  static Words words(Style style, Point at, String text) {
    return new Words(style, at, text, Anchor.START, 0, About.NOTHING);
  }

  /** Words around a point. */
  static Words centred(Style style, Point at, String text) {
    return new Words(style, at, text, Anchor.MIDDLE, 0, About.NOTHING);
  }
}
