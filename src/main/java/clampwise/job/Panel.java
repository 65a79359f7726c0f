package clampwise.job;

import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Force;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Pressure;
import clampwise.job.Quantity.Temperature;
import clampwise.job.Quantity.Thickness;
import java.util.List;
import java.util.Optional;

/** A roof covering. */
public record Panel(
    @Doc("How the covering is built.") Choice<Panel.Kind> kind,
    @Doc(
            "Seam fold (single-lock, double-lock, snap-lock, bulb, batten), or the name of the rib"
                + " profile.")
        Optional<Text> profile,
    @Doc("Metal of the sheet.") Optional<Choice<Metal>> metal,
    @Doc("Base metal thickness, as a length or a gauge such as 24 ga.")
        Optional<Thickness> thickness,
    @Doc("Metallic coating, such as AZ50 or G90.") Optional<Text> coating,
    @Doc("Whether it is painted over its metallic coating.") Optional<Flag> painted,
    @Doc("Distance between neighbouring seams, structural ribs or crests.") Optional<Length> pitch,
    @Doc("Height of the seam, rib or corrugation.") Optional<Length> height,
    @Doc("Width of the seam at the clamp, or of the flat on top of the rib.")
        Optional<Length> topWidth,
    @Doc("Distances of the minor, non-structural ribs from the structural rib to their left.")
        List<Length> minorRibs,
    @Doc("Whether the clips let the panel slide.") Optional<Choice<Panel.Clips>> clips,
    @Doc("Where each panel run is fixed.") Optional<Choice<Panel.FixedPoint>> fixedPoint,
    @Doc("How far each clip lets the panel slide, either way from its middle.")
        Optional<Length> clipTravel,
    @Doc("Hottest that the sheet gets in the sun.") Optional<Temperature> hottest,
    @Doc("Temperature at which the panels were laid.") Optional<Temperature> laidAt,
    @Doc("What the panel rests on.") Optional<Choice<Substrate>> substrate,
    @Doc("Load test of the panel in the middle of a span.") Optional<Panel.WalkTest> walkTest,
    @Doc("What a clip may take away from the roof.") Optional<Panel.Strength> clipStrength,
    @Doc("What the fixed point of a panel run may take down the slope.")
        Optional<Panel.Strength> fixedPointStrength,
    @Doc("Weight of the covering by area of roof; a usual one when left out.")
        Optional<Pressure> weight,
    @Doc("Facts above that nobody has confirmed, by key.") List<Text> assumed) {

  /** How a metal roof covering is built. */
  public enum Kind {
    STANDING_SEAM,
    TRAPEZOIDAL,
    CORRUGATED
  }

  /** How the panel is held to the structure. */
  public enum Clips {
    FLOATING,
    FIXED,
    THROUGH_FASTENED
  }

  /** A load test of a panel in the middle of a span. */
  public record WalkTest(
      @Doc("Load on a spot in the middle.") Force load,
      @Doc("Deflection under that load.") Length sag,
      @Doc("Span between supports.") Length span) {}

  /** A force that a clip or a fixed point may take. */
  public record Strength(
      @Doc("The force.") Force force,
      @Doc("Whether it is allowable, ultimate or a design resistance.")
          Optional<Choice<Tested.Basis>> loadsAre,
      @Doc("Safety factor between ultimate and allowable load.") Optional<Factor> safetyFactor,
      @Doc("Resistance factor between ultimate load and design strength.")
          Optional<Factor> resistanceFactor) {}

  /** Where a panel run is fixed against sliding. */
  public enum FixedPoint {
    EAVE,
    RIDGE,
    MIDDLE
  }
}
