package clampwise.facts.roof;

import clampwise.calc.Snap;
import java.util.List;

/** Distances from the nearest of several lines across the slope. */
final class Nearest {

  private Nearest() {}

  /** Distance of a place up the slope from the nearest line [m]; there is at least one. */
  static double distanceM(List<Double> linesM, double upM) {
    return linesM.stream()
        .mapToDouble(line -> Snap.m(Math.abs(line - upM)))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
