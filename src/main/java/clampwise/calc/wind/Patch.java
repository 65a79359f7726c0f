package clampwise.calc.wind;

import clampwise.calc.trail.Term;

/**
 * A loaded part of a roof.
 *
 * @param zone zone of the figure, such as {@code 2e}
 * @param areaM2 effective wind area [m²]
 */
public record Patch(String zone, double areaM2) {

  Term area() {
    return Term.area("A", "effective wind area", areaM2);
  }
}
