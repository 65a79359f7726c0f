package clampwise.job;

import clampwise.job.Quantity.Force;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Pressure;
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
    @Doc("Dead load of the roof as it stands.") Optional<Pressure> roofDeadLoad,
    @Doc("Load the design left for what is hung from the roof.") Optional<Pressure> collateralLoad,
    @Doc("Roof live load or snow that the members were designed for.")
        Optional<Pressure> roofDesignLoad,
    @Doc("Weight that the bracing was designed to hold in an earthquake.")
        Optional<Force> lateralWeight,
    @Doc("Whether an engineer has checked the members and bracing with the array.")
        Optional<Flag> membersChecked,
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
