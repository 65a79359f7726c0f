package clampwise.plan;

import java.util.List;

/**
 * How something is drawn.
 *
 * @param line colour of its line, empty for none
 * @param widthMm width of the line [mm]
 * @param dashMm lengths of dashes and gaps [mm], empty for a line without gaps
 * @param fill colour of its inside, empty for none
 */
public record Pen(String line, double widthMm, List<Double> dashMm, String fill) {

  static Pen line(String colour, double widthMm, Double... dashMm) {
    return new Pen(colour, widthMm, List.of(dashMm), "");
  }

  static Pen fill(String colour) {
    return new Pen("", 0, List.of(), colour);
  }

  Pen over(String colour) {
    return new Pen(line, widthMm, dashMm, colour);
  }
}
