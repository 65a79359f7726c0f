package clampwise.job;

import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Mass;
import clampwise.job.Quantity.Pressure;
import clampwise.job.Quantity.Slope;
import java.util.List;
import java.util.Optional;

/**
 * A group of modules with the same parts. {@code like: OTHER} takes every key that is not written
 * here from another field; it is resolved when the file is read.
 */
public record Field(
    @Doc("Name of the roof plane it lies on.") Text plane,
    @Doc("Name of the module type.") Text module,
    @Doc("Landscape puts the long side along the eave, portrait up the slope.")
        Choice<Field.Orientation> orientation,
    @Doc("Seam clamp or rib bracket, by name.") Optional<Text> attachment,
    @Doc("Mid clamp, by name.") Optional<Text> midClamp,
    @Doc("End clamp, by name.") Optional<Text> endClamp,
    @Doc("Gap between modules, both ways.") Optional<Length> gap,
    @Doc("Gap between columns, if it differs.") Optional<Length> columnGap,
    @Doc("Gap between rows, if it differs; else the mid clamp sets it.") Optional<Length> rowGap,
    @Doc("Height of the modules' upper surface above the roof.") Optional<Length> topHeight,
    @Doc("Mass of clamps, attachments and wires for each module.") Optional<Mass> hardwareMass,
    @Doc("Slope between module and roof.") Optional<Slope> tilt,
    @Doc("Rows by columns, minus what is left out.") Optional<Field.Block> block,
    @Doc("Free columns, one by one.") List<Field.Column> columns,
    @Doc("Where the attachments sit.") Optional<Attach> attach,
    @Doc("Module type of single modules that differ, by module name.") Named<Text> otherModules,
    @Doc("Load each module must carry, per direction.") Optional<Field.DesignLoad> designLoad,
    @Doc("Side whose rating the calculation uses.") Optional<Choice<ModuleType.Side>> ratingUsed,
    @Doc("Widest spacing between attachments along a line, by wind zone.")
        Named<Length> allowedSpacing,
    @Doc("Widest spacing between attachments along a seam, by wind zone.")
        Named<Length> allowedSeamSpacing,
    @Doc("What the first row is set out from.") Optional<Choice<Field.ReferenceLine>> setOutFrom) {

  /** Which way a module lies. */
  public enum Orientation {
    LANDSCAPE,
    PORTRAIT
  }

  /** What the first row is set out from. */
  public enum ReferenceLine {
    EAVE,
    SEAMS
  }

  /** A block of modules: rows up the slope by columns along the eave. */
  public record Block(
      @Doc("Lower left corner of the lowest, leftmost module.") Spot at,
      @Doc("Rows, counted up the slope.") Count rows,
      @Doc("Columns, counted along the eave.") Count columns,
      @Doc("Modules left out, such as R2C3.") List<Text> omit) {}

  /** One free column of modules. */
  public record Column(
      @Doc("Lower left corner; beside the column before when left out.") Optional<Spot> at,
      @Doc("Modules, counted up the slope.") Count modules,
      @Doc("Places in the column left empty, counted from below.") List<Count> omit) {}

  /** Design pressures a module must carry. */
  public record DesignLoad(
      @Doc("Toward the roof.") Optional<Pressure> down,
      @Doc("Away from the roof.") Optional<Pressure> up) {}
}
