package clampwise.facts.loads;

/**
 * Where a module lies, as far as wind is concerned: modules in equal places take equal pressures.
 *
 * @param zone the most severe wind zone it reaches into
 * @param areaM2 its own area, which is its effective wind area [m²]
 * @param edgeFactor factor on uplift at exposed edges of the array [-]
 */
record Place(String zone, double areaM2, double edgeFactor) {}
