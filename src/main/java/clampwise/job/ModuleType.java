package clampwise.job;

import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Mass;
import clampwise.job.Quantity.Pressure;
import java.util.List;
import java.util.Optional;

/** A kind of module, as its maker's manual describes it. */
public record ModuleType(
    @Doc("Long side.") Length length,
    @Doc("Short side.") Length width,
    @Doc("Height of the frame.") Optional<Length> frameHeight,
    @Doc("Width of the frame's upper flange, up to the glass.") Optional<Length> frameLip,
    @Doc("Mass.") Optional<Mass> mass,
    @Doc("Whether the loads of the clamp zones are design loads or test loads.")
        Optional<Choice<ModuleType.LoadBasis>> loadsAre,
    @Doc("Where clamps may grip, with the loads that holds for.") List<ClampZone> clampZones,
    @Doc("Fewest clamps the manual asks for.") Optional<Count> clampsAtLeast,
    @Doc("Longest overhang past the last clamp the manual allows.") Optional<Length> overhangAtMost,
    @Doc("Clamps and attachments this module is listed with, by name.")
        Optional<List<Text>> listedWith,
    @Doc("Fire type, such as type 1.") Optional<Text> fireType,
    @Doc("How hot it may get, by its listing; standard when left out.")
        Optional<Choice<ModuleType.TemperatureLevel>> temperatureLevel,
    @Doc("Electrical ratings.") Optional<ModuleElectrics> electrical) {

  /** Whether a load is a design load or a test load, which is higher. */
  public enum LoadBasis {
    DESIGN,
    TEST
  }

  /** How hot a module may get, 98th percentile of the year. */
  public enum TemperatureLevel {
    STANDARD,
    LEVEL_1,
    LEVEL_2
  }

  /** The side of a module that is clamped. */
  public enum Side {
    LONG,
    SHORT
  }

  /** One row of a clamp-zone table. */
  public record ClampZone(
      @Doc("Side that is clamped.") Choice<Side> side,
      @Doc("Distance from the nearest corner to the middle of the clamp.") LengthRange zone,
      @Doc("Load toward the roof.") Optional<Pressure> down,
      @Doc("Load away from the roof.") Optional<Pressure> up) {}
}
