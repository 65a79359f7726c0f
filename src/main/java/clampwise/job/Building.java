package clampwise.job;

import clampwise.job.Quantity.Length;
import java.util.Optional;

/** The building that carries the roof. */
public record Building(
    @Doc("Shape of the roof.") Optional<Choice<Building.RoofShape>> roof,
    @Doc("Plan size along the ridge.") Optional<Length> length,
    @Doc("Plan size across the ridge.") Optional<Length> width,
    @Doc("Height of the eave above ground.") Optional<Length> eaveHeight,
    @Doc("Mean roof height above ground.") Optional<Length> meanRoofHeight,
    @Doc("How open its walls are; enclosed when left out.")
        Optional<Choice<Building.Enclosure>> enclosure,
    @Doc("Height of the lowest parapet around the roof.") Optional<Length> parapet,
    @Doc("What the building is used for.") Optional<Text> occupancy) {

  /** How open the walls of a building are, as the wind standards sort them. */
  public enum Enclosure {
    ENCLOSED,
    PARTIALLY_OPEN,
    PARTIALLY_ENCLOSED,
    OPEN
  }

  /** Shape of a roof, as the wind standards sort them. */
  public enum RoofShape {
    GABLE,
    HIP,
    MONOSLOPE,
    FLAT
  }
}
