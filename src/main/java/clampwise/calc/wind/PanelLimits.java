package clampwise.calc.wind;

import clampwise.calc.trail.Source;

/**
 * Limits of the method for panels parallel to the roof.
 *
 * @param height most height of the panels' upper side above the roof [m]
 * @param tilt most slope between panel and roof [rad]
 * @param gap least gap between panels [m]
 * @param gapSpacing most distance from gap to gap [m]
 * @param edgeHeights least distance from roof edge or ridge, in heights of the panels [-]
 */
public record PanelLimits(
    Bound height, Bound tilt, Bound gap, Bound gapSpacing, Bound edgeHeights) {

  /** A limit with its source. */
  public record Bound(double si, Source source) {}
}
