package clampwise.job;

import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Torque;
import java.util.List;
import java.util.Optional;

/** How the array is to be set, tightened and looked after. */
public record Install(
    @Doc("How far a module may be off beside the one before it, either way.")
        Optional<Length> tolerance,
    @Doc("How often modules are set from a measured mark instead of the module before.")
        Optional<Install.ReDatum> reDatum,
    @Doc("Measured corners and diagonals, by field.") Named<Install.Squareness> squareness,
    @Doc("First day of work on the roof.") Optional<Day> begins,
    @Doc("Last day of work on the roof; the first when left out.") Optional<Day> ends,
    @Doc("Tools that tighten screws, by name.") Named<Install.Tool> tools,
    @Doc("Torques on the sheet that the crew holds, by part.") Named<Torque> torques,
    @Doc("How many of each part the torque log has, by part.") Named<Count> torqueLog,
    @Doc("Whether a sample of the set screws is checked again with a torque tool.")
        Optional<Flag> setScrewsRechecked,
    @Doc("Plan for checking the torques again in later years.") Optional<Install.Retorque> retorque,
    @Doc("Steps of the work, in their order.") Optional<List<Choice<InstallStep>>> steps,
    @Doc("How people are kept from falling.") Optional<Install.FallProtection> fallProtection) {

  /** Marks from which modules are set again. */
  public record ReDatum(
      @Doc("A mark after every so many columns of a row.") Optional<Count> columns,
      @Doc("A mark after every so many rows of a column.") Optional<Count> rows) {}

  /** Lengths measured on the first rows of a field. */
  public record Squareness(
      @Doc("Side along the eave, for a corner.") Optional<Length> along,
      @Doc("Side up the slope, for a corner.") Optional<Length> up,
      @Doc("Diagonal between the ends of those two sides.") Optional<Length> diagonal,
      @Doc("Both diagonals of the field.") List<Length> diagonals) {}

  /** A tool and what it tightens. */
  public record Tool(
      @Doc("What it is.") Choice<ToolKind> kind,
      @Doc("Which screws it tightens last.") List<Choice<Joint>> tightens,
      @Doc("Date of its last certificate, for torque tools.") Optional<Day> certified) {}

  /** A tool that tightens screws. */
  public enum ToolKind {
    TORQUE_WRENCH,
    TORQUE_SCREWDRIVER,
    HAND_TOOL,
    DRILL_DRIVER,
    IMPACT_DRIVER;

    /** Whether one reads or sets a torque on it. */
    public boolean measures() {
      return this == TORQUE_WRENCH || this == TORQUE_SCREWDRIVER;
    }
  }

  /** Screws of one kind. */
  public enum Joint {
    SET_SCREWS,
    MODULE_CLAMPS,
    BONDING_PARTS,
    BRACKET_SCREWS
  }

  /** What is checked again in later years. */
  public record Retorque(
      @Doc("Share of the module clamps that is checked each time.") Optional<Factor> clamps,
      @Doc("Months from one check to the next.") Optional<Count> everyMonths) {}

  /** Measures against falls. */
  public record FallProtection(
      @Doc("What holds people back while the array is built.") Optional<Choice<Means>> work,
      @Doc("What holds people back in later years.") Optional<Choice<Means>> maintenance,
      @Doc("Whether skylights and translucent panels are guarded.") Optional<Flag> skylightsGuarded,
      @Doc("What brings the modules up.") Optional<Choice<Lift>> modulesLiftedBy) {}

  /** What keeps people from falling. */
  public enum Means {
    ANCHORS,
    GUARDRAILS,
    NETS,
    NONE
  }

  /** What brings modules to the roof. */
  public enum Lift {
    HOIST,
    CRANE,
    FORKLIFT,
    LADDER
  }
}
