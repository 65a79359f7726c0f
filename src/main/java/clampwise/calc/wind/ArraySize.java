package clampwise.calc.wind;

/**
 * Sizes that decide whether a panel is exposed.
 *
 * @param topHeightM height h2 of the panels' upper side above the roof [m]
 * @param panelLengthM chord length of a panel [m]
 * @param buildingHeightM height h of the building [m]
 */
public record ArraySize(double topHeightM, double panelLengthM, double buildingHeightM) {}
