package clampwise.job;

import clampwise.job.Quantity.Area;
import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Pressure;
import clampwise.job.Quantity.Voltage;
import java.util.Optional;

/** What the drawings state, to be compared with what is computed. */
public record Claims(
    @Doc("Width of the wind zones drawn along the edges.") Optional<Length> zoneWidth,
    @Doc("Modules counted on the drawing.") Optional<Count> modules,
    @Doc("Attachments counted on the drawing.") Optional<Count> attachments,
    @Doc("Mid clamps counted on the drawing.") Optional<Count> midClamps,
    @Doc("End clamps counted on the drawing.") Optional<Count> endClamps,
    @Doc("Bonding jumpers counted on the drawing.") Optional<Count> jumpers,
    @Doc("Grounding lugs counted on the drawing.") Optional<Count> lugs,
    @Doc(
            "Attachments counted in each wind zone: field, edge and corner, or a zone of the figure such as 2e.")
        Named<Count> attachmentsByZone,
    @Doc("Factor for continuity over the supports that the calculation uses.")
        Optional<Factor> continuityFactor,
    @Doc("Whether the calculation counts roof live load under the array.")
        Optional<Flag> liveLoadUnderArray,
    @Doc("Wind pressures of the calculation in each wind zone.")
        Named<Claims.ZonePressures> pressures,
    @Doc("Whether those pressures are of strength or service level.")
        Optional<Choice<Claims.Level>> pressuresAre,
    @Doc("Factor on the uplift of modules at exposed edges that the calculation uses: 1 or 1.5.")
        Optional<Factor> edgeFactor,
    @Doc("Pressure equalisation factor that the calculation uses.")
        Optional<Factor> equalisationFactor,
    @Doc("Area at which that factor was read.") Optional<Area> equalisationArea,
    @Doc("Slope factor of the snow load that the calculation uses.") Optional<Factor> slopeFactor,
    @Doc("Area of module that the calculation gives one attachment.")
        Optional<Claims.Tributary> tributary,
    @Doc("Largest share of an attachment's strength in use that the calculation states.")
        Optional<Factor> utilisation,
    @Doc("Share of the roof that the arrays cover in plan, as the drawings state it.")
        Optional<Factor> roofCoverage,
    @Doc("Voltages of strings in the cold that the calculation states, by string.")
        Named<Voltage> stringVoltages,
    @Doc("Path of the permit that the submittal asks for.") Optional<Choice<Claims.Path>> path) {

  /** A path to a permit. */
  public enum Path {
    EXPEDITED,
    ENGINEERED
  }

  /** Level of stated loads. */
  public enum Level {
    STRENGTH,
    SERVICE
  }

  /** Pressures stated for a wind zone, without a sign. */
  public record ZonePressures(
      @Doc("Away from the roof.") Optional<Pressure> up,
      @Doc("Toward the roof.") Optional<Pressure> down) {}

  /** Areas stated for an attachment, by what its line holds. */
  public record Tributary(
      @Doc("On a line that holds two rows of modules.") Optional<Area> innerLine,
      @Doc("On a line that holds one row.") Optional<Area> edgeLine) {}
}
