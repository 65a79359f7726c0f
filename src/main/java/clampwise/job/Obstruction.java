package clampwise.job;

import clampwise.job.Quantity.Length;
import java.util.Optional;

/** A thing on the roof that modules must keep clear of. */
public record Obstruction(
    @Doc("What it is.") Choice<Obstruction.Kind> kind,
    @Doc("Its lower left corner, or its centre if it is round.") Spot at,
    @Doc("Extent along x up, if it is rectangular.") Optional<Size> size,
    @Doc("Diameter, if it is round.") Optional<Length> diameter,
    @Doc("Height above the roof.") Optional<Length> height,
    @Doc("Distance modules keep from it.") Optional<Length> clearance,
    @Doc("Metal of its flashing or boot, where that is metal.")
        Optional<Choice<SurfaceMetal>> metal,
    @Doc("Whether a pad or coating keeps its metal apart from the sheet.") Optional<Flag> isolated,
    @Doc("How its boot goes with the panel as that slides.")
        Optional<Choice<Obstruction.Boot>> boot) {

  /** How a boot goes with the panel as that slides. */
  public enum Boot {
    FLEXIBLE,
    RIGID
  }

  /** What stands on or opens a roof. */
  public enum Kind {
    VENT,
    RIDGE_VENT,
    FLUE,
    SKYLIGHT,
    TRANSLUCENT_PANEL,
    HATCH,
    STANDPIPE,
    SMOKE_VENT,
    CURB,
    UNIT,
    DRAIN,
    SNOW_RETENTION,
    OTHER
  }
}
