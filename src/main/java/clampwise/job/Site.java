package clampwise.job;

import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Pressure;
import clampwise.job.Quantity.Speed;
import clampwise.job.Quantity.Temperature;
import java.util.Optional;

/** Where the building stands. */
public record Site(
    @Doc("Code editions in force.") Optional<Codes> codes,
    @Doc("Basic wind speed of the code edition.") Optional<Speed> windSpeed,
    @Doc("Wind exposure of the ground around, ASCE 7.") Optional<Choice<Site.Exposure>> exposure,
    @Doc("Terrain category of the ground around, EN 1991-1-4.")
        Optional<Choice<Site.Terrain>> terrain,
    @Doc("Risk category of the building, ASCE 7.") Optional<Choice<Site.RiskCategory>> riskCategory,
    @Doc("Topographic factor of the wind: Kzt of ASCE 7, orography factor of EN 1991-1-4.")
        Optional<Factor> topographicFactor,
    @Doc("Height of the ground above sea level.") Optional<Length> elevation,
    @Doc("Ground snow load.") Optional<Pressure> groundSnow,
    @Doc("Lowest expected ambient temperature.") Optional<Temperature> lowestTemperature,
    @Doc("Highest expected ambient temperature.") Optional<Temperature> highestTemperature,
    @Doc("Corrosivity class of the air, C1 to CX.") Optional<Choice<Site.Corrosivity>> corrosivity,
    @Doc("What lies around the building, as far as metals feel it.")
        Optional<Choice<Site.Setting>> setting,
    @Doc("How hot modules get there.") Optional<Site.ModuleTemperatures> moduleTemperatures) {

  /** What lies around a building, as far as metals feel it. */
  public enum Setting {
    RURAL,
    URBAN,
    INDUSTRIAL,
    COASTAL,
    SHORE
  }

  /** The 98th percentile of the temperature of modules over a year. */
  public record ModuleTemperatures(
      @Doc("With an insulated back, 98th percentile of the year.") Optional<Temperature> insulated,
      @Doc("In an open rack, 98th percentile of the year.") Optional<Temperature> open) {}

  /** Exposure category of the ground around the building, ASCE 7. */
  public enum Exposure {
    B,
    C,
    D
  }

  /** Terrain category of the ground around the building, EN 1991-1-4. */
  public enum Terrain implements Choice.Spelt {
    ZERO,
    I,
    II,
    III,
    IV;

    @Override
    public String word() {
      return this == ZERO ? "0" : name();
    }
  }

  /** Risk category of the building, ASCE 7 table 1.5-1. */
  public enum RiskCategory implements Choice.Spelt {
    I,
    II,
    III,
    IV;

    @Override
    public String word() {
      return name();
    }
  }

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
  public enum LoadCode implements Choice.Edition {
    ASCE_7_16,
    ASCE_7_22,
    EN_1991
  }
}
