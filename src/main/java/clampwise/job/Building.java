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
    @Doc("What the building is used for.") Optional<Text> occupancy) {

  /** Shape of a roof, as the wind standards sort them. */
  public enum RoofShape {
    GABLE,
    HIP,
    MONOSLOPE,
    FLAT
  }
}
