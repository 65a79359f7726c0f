package clampwise.facts.loads;

/**
 * Slope factors of a roof with an array.
 *
 * @param factor with the array as the job describes it [-]
 * @param bare of bare, slippery metal off which snow slides [-]
 */
record SlopeSnow(double factor, double bare) {}
