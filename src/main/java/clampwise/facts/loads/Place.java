package clampwise.facts.loads;

/**
 * Where a module lies, as far as wind is concerned: modules in equal places take equal pressures.
 *
 * @param zone the most severe wind zone it reaches into
 * @param areaM2 its own area, which is its effective wind area [m²]
 * @param edgeFactor factor on uplift at exposed edges of the array [-]
 * @param spot number of the pair of zones that govern uplift and pressure, where the standard has
 *     zones for each wind direction
 */
record Place(String zone, double areaM2, double edgeFactor, int spot) {

  /** A place whose zone says all. */
  Place(String zone, double areaM2, double edgeFactor) {
    this(zone, areaM2, edgeFactor, 0);
  }
}
