package clampwise.calc.wind;

import clampwise.calc.ZoneWidth.Roof;

/**
 * What the pressure coefficients ask about a building.
 *
 * @param roof shape, slope, least plan size (not a number if unknown) and height h
 * @param parapetM height of the lowest parapet around the roof, 0 without one [m]
 */
public record WindBuilding(Roof roof, Enclosure enclosure, double parapetM) {

  /** An enclosed building without parapet. */
  public static WindBuilding enclosed(Roof roof) {
    return new WindBuilding(roof, Enclosure.ENCLOSED, 0);
  }
}
