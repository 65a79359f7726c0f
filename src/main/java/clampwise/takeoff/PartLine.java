package clampwise.takeoff;

import java.util.Optional;

/**
 * A line of the parts list.
 *
 * @param count on the drawing
 * @param spares on top of that
 * @param eachKg mass of one, if it is known [kg]
 */
public record PartLine(Part part, int count, int spares, Optional<Double> eachKg) {

  /** How many to order. */
  public int order() {
    return count + spares;
  }

  /** Mass of all that is ordered, if it is known [kg]. */
  public Optional<Double> orderKg() {
    return eachKg.map(kg -> order() * kg);
  }

  /** Mass of what is on the drawing, if it is known [kg]. */
  public Optional<Double> drawnKg() {
    return eachKg.map(kg -> count * kg);
  }
}
