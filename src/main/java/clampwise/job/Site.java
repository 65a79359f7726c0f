package clampwise.job;

import clampwise.job.Quantity.Pressure;
import clampwise.job.Quantity.Speed;
import clampwise.job.Quantity.Temperature;
import java.util.Optional;

/** Where the building stands. */
public record Site(
    @Doc("Code editions in force.") Optional<Codes> codes,
    @Doc("Basic wind speed of the code edition.") Optional<Speed> windSpeed,
    @Doc("Wind exposure or terrain category.") Optional<Text> exposure,
    @Doc("Risk category I to IV.") Optional<Text> riskCategory,
    @Doc("Ground snow load.") Optional<Pressure> groundSnow,
    @Doc("Lowest expected ambient temperature.") Optional<Temperature> lowestTemperature,
    @Doc("Highest expected ambient temperature.") Optional<Temperature> highestTemperature,
    @Doc("Corrosivity class of the air, C1 to CX.")
        Optional<Choice<Site.Corrosivity>> corrosivity) {

  /** Corrosivity of the atmosphere, ISO 9223. */
  public enum Corrosivity {
    C1,
    C2,
    C3,
    C4,
    C5,
    CX
  }

  /** Code editions in force at the site. */
  public record Codes(
      @Doc("Edition of the wind and snow standard.") Optional<Choice<LoadCode>> loads,
      @Doc("Edition of the electrical code.") Optional<Text> electrical,
      @Doc("Edition of the fire code.") Optional<Text> fire) {}

  /** A wind and snow standard with its edition. */
  public enum LoadCode {
    ASCE_7_16,
    ASCE_7_22,
    EN_1991
  }
}
