package clampwise.job;

import clampwise.job.Quantity.Voltage;
import java.util.List;
import java.util.Optional;

/** Strings, conductors and protection. */
public record Electrical(
    @Doc("Electrical code in force; that of the site when left out.")
        Optional<Choice<ElectricalCode>> code,
    @Doc("What the building is to the code: a dwelling is a house for one or two families.")
        Optional<Choice<Electrical.Occupancy>> occupancy,
    @Doc("Whether the bonding may have to carry lightning current, IEC.")
        Optional<Flag> lightningCurrent,
    @Doc("Highest dc voltage that the inverters take.") Optional<Voltage> inverterVoltageAtMost,
    @Doc("Strings, by name; strings alike are one entry.") Named<Electrical.PvString> strings,
    @Doc("Circuits with their protection, by name.") Named<Circuit> circuits,
    @Doc("Cables under the modules.") Optional<Cables> cables,
    @Doc("Connectors of the strings.") Optional<Electrical.Connectors> connectors,
    @Doc("Rapid shutdown, NEC 690.12.") Optional<RapidShutdown> rapidShutdown,
    @Doc("What protects the dc circuits against arcs.")
        Optional<Choice<Electrical.ArcFault>> arcFault,
    @Doc("Labels on the drawings.") Optional<Electrical.Labels> labels,
    @Doc("Test of the bonds from frame to lug.") Optional<Electrical.BondTest> bondTest) {

  /** What a building is to the electrical code. */
  public enum Occupancy {
    DWELLING,
    OTHER
  }

  /** Protection against arcs. */
  public enum ArcFault {
    INVERTER,
    SEPARATE,
    NONE
  }

  /** Modules in series, once or several times. */
  public record PvString(
      @Doc("Modules in series.") Count inSeries,
      @Doc("Field the modules belong to.") Optional<Text> field,
      @Doc("Module type; that of the field when left out.") Optional<Text> module,
      @Doc("How many strings there are of this kind; one when left out.") Optional<Count> count) {}

  /** Connectors other than those of the modules. */
  public record Connectors(
      @Doc("Maker and type of connectors made on site, in one name.") Optional<Text> madeOnSite,
      @Doc("Maker and type of connectors of inverters and other equipment.")
          Optional<Text> equipment,
      @Doc("Where connectors lie.") Optional<Choice<Place>> lie) {}

  /** Where connectors lie. */
  public enum Place {
    OFF_ROOF,
    ON_ROOF,
    IN_PAN
  }

  /** Labels as the drawings show them. */
  public record Labels(
      @Doc("Which labels are shown.") Optional<List<Choice<Label>>> shown,
      @Doc("Height of the letters of the rapid-shutdown label.") Optional<Quantity.Length> letters,
      @Doc("Whether the rapid-shutdown label is reflective.") Optional<Flag> reflective) {}

  /** A label. */
  public enum Label {
    RAPID_SHUTDOWN,
    DIRECTORY,
    DC_DISCONNECT,
    DC_VOLTAGE,
    DC_RACEWAY
  }

  /** Test of bonds. */
  public record BondTest(
      @Doc("Whether the test sheet asks for it.") Optional<Flag> onTestSheet,
      @Doc("Highest resistance measured, or allowed by the test sheet.")
          Optional<Quantity.Resistance> resistance) {}
}
