package clampwise.calc.wind;

import java.util.Optional;

/**
 * How an array lies on its roof; what is not known stays empty.
 *
 * @param topHeightM height h2 of the panels' upper side above the roof [m]
 * @param tiltRad slope between panel and roof [rad]
 * @param gapM least gap between panels [m]
 * @param freeM how far around a panel on its own no other was found, where there is no gap [m]
 * @param gapSpacingM greatest distance from one gap to the next, both ways [m]
 * @param edgeDistanceM least distance of the array from a roof edge, gable ridge or hip ridge [m]
 */
public record PanelSetup(
    Optional<Double> topHeightM,
    Optional<Double> tiltRad,
    Optional<Double> gapM,
    Optional<Double> freeM,
    Optional<Double> gapSpacingM,
    Optional<Double> edgeDistanceM) {}
