package clampwise.job;

import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Pressure;
import clampwise.job.Quantity.Slope;
import java.util.Optional;

/** How loads are taken where the code leaves it open, and what site and building do not say. */
public record Loads(
    @Doc(
            "Allowable stress (asd) or strength design (lrfd); asd when left out. EN 1990 has its own.")
        Optional<Choice<Loads.Method>> method,
    @Doc("Weight of modules and attachments by area of roof; the modules' own when left out.")
        Optional<Pressure> dead,
    @Doc("Whether all clamps of a module edge share its load evenly; each its own when left out.")
        Optional<Flag> clampsShareEdge,
    @Doc("Where transcriptions of the wind standard disagree; the severe side when left out.")
        Optional<Loads.WindReading> wind,
    @Doc("What the snow load asks about the roof.") Optional<Loads.Snow> snow,
    @Doc("Parameters that a national annex of EN 1990 and EN 1991 sets.")
        Optional<Loads.Annex> annex) {

  /** How loads and resistances are compared. */
  public enum Method {
    ASD,
    LRFD
  }

  /** Readings of the wind standard, as stated assumptions. */
  public record WindReading(
      @Doc("How the exposure coefficient is found.")
          Optional<Choice<Loads.ExposureMethod>> exposureCoefficient,
      @Doc("What makes a panel exposed.") Optional<Choice<Loads.ExposedReading>> exposedEdge,
      @Doc("End of the equalisation line: 0.40 or 0.45.") Optional<Factor> equalisationEnd,
      @Doc("Uplift factor of every module, 1 or 1.5, instead of one found from the array's edges.")
          Optional<Factor> edgeFactor,
      @Doc("End of the lines of zones 2 and 3 in figure 30.3-2F of ASCE 7-22.")
          Optional<Choice<Loads.HipCurve>> hipCurve,
      @Doc("Whether exposure B has the coefficient 0.70 at least below 30 ft.")
          Optional<Flag> exposureFloor,
      @Doc("Whether walls are reduced where a parapet lends their coefficient to a low roof.")
          Optional<Flag> wallReduction,
      @Doc("Which reading of the rows of EN 1991-1-4 holds about which sources disagree.")
          Optional<Choice<Loads.DisputedRows>> disputedRows) {}

  /** Readings of a row about which the sources disagree. */
  public enum DisputedRows {
    SEVERE,
    OTHER
  }

  /** Ends of a line of figure 30.3-2F. */
  public enum HipCurve {
    TO_100_SQ_FT,
    TO_200_SQ_FT
  }

  /** Way to the exposure coefficient. */
  public enum ExposureMethod {
    TABLE,
    FORMULA,
    SEVERE
  }

  /** Readings of what makes a panel exposed. */
  public enum ExposedReading {
    FOUR_HEIGHTS,
    TWO_HEIGHTS,
    SEVERE
  }

  /** Snow on the roof and on the array. */
  public record Snow(
      @Doc("Exposure factor Ce.") Optional<Factor> exposureFactor,
      @Doc("Thermal factor Ct.") Optional<Factor> thermalFactor,
      @Doc("Whether snow slides off roof and array over a free eave; the array holds it if not.")
          Optional<Flag> slidesOff,
      @Doc("Thermal resistance of the roof in ft²·h·°F/Btu.") Optional<Factor> roofResistance,
      @Doc("Whether the roof is ventilated.") Optional<Flag> ventilated,
      @Doc("Whether simple rafters span from eave to ridge.") Optional<Flag> simpleRafters,
      @Doc("Winter wind parameter W2 of ASCE 7-22.") Optional<Factor> winterWind,
      @Doc("Slope of the roof beyond the ridge, if it differs.") Optional<Slope> otherSlope,
      @Doc("A higher roof that drops or blows snow on this one.")
          Optional<Loads.HigherRoof> higherRoof) {}

  /** A higher roof beside this one. */
  public record HigherRoof(
      @Doc("Name of the plane it stands beside.") Text beside,
      @Doc("Height of the step above this roof.") Length rise,
      @Doc("Length of the higher roof away from the step.") Length length,
      @Doc("Plan distance from its eave to its ridge, if it sheds snow on this roof.")
          Optional<Length> eaveToRidge,
      @Doc("Its slope.") Optional<Slope> slope,
      @Doc("Whether its surface is slippery, such as metal.") Optional<Flag> slippery) {}

  /** Parameters open to a national annex; the recommended value where left out. */
  public record Annex(
      @Doc("Directional factor of the wind.") Optional<Factor> directionFactor,
      @Doc("Seasonal factor of the wind.") Optional<Factor> seasonFactor,
      @Doc("Terrain factor, if the annex has its own procedure.") Optional<Factor> terrainFactor,
      @Doc("Density of air in kg/m³, written as a plain number such as 1.25.")
          Optional<Factor> airDensity,
      @Doc("Turbulence factor.") Optional<Factor> turbulenceFactor,
      @Doc("Partial factor of dead load where it adds.") Optional<Factor> deadUnfavourable,
      @Doc("Partial factor of dead load where it helps.") Optional<Factor> deadFavourable,
      @Doc("Partial factor of wind and snow.") Optional<Factor> variable,
      @Doc("Combination factor of snow.") Optional<Factor> psiSnow,
      @Doc("Combination factor of wind.") Optional<Factor> psiWind) {}
}
