package clampwise.units;

import java.util.Optional;

/** The words for a text that is not the quantity it should be. */
final class Faults {

  private static final int LONGEST = 40;

  private final String text;
  private final Dimension dimension;

  Faults(String text, Dimension dimension) {
    this.text = text;
    this.dimension = dimension;
  }

  Parsed noQuantity() {
    return new Parsed.Fault(text.isBlank() ? "nothing" : quoted(), expected());
  }

  Parsed noUnit() {
    return new Parsed.Fault(quoted() + " without a unit", expected());
  }

  Parsed comma() {
    return new Parsed.Fault(
        quoted() + ", whose comma may part thousands or decimals",
        expected() + "; a point for decimals, no comma for thousands");
  }

  Parsed unit(String spelling) {
    Optional<String> other = Units.dimensionOf(spelling).map(Faults::name);
    Optional<String> near = Units.nearest(dimension, spelling).map(unit -> unit.symbol());
    String found = other.map(name -> quoted() + ", which is " + name).orElseGet(this::quoted);
    String hint = near.map(symbol -> "; the nearest unit is " + symbol).orElse("");
    return new Parsed.Fault(found, expected() + hint);
  }

  private String quoted() {
    String clean = text.strip();
    String shown = clean.length() <= LONGEST ? clean : clean.substring(0, LONGEST) + "...";
    return "\"" + shown + "\"";
  }

  private String expected() {
    return name(dimension) + " such as " + example();
  }

  private static String name(Dimension dimension) {
    return switch (dimension) {
      case LENGTH -> "a length";
      case ANGLE -> "a slope or angle";
      case AREA -> "an area";
      case MASS -> "a mass";
      case FORCE -> "a force";
      case PRESSURE -> "a pressure";
      case LINE_LOAD -> "a load per length";
      case UNIT_WEIGHT -> "a weight per volume";
      case SPEED -> "a speed";
      case TEMPERATURE -> "a temperature";
      case TORQUE -> "a torque";
      case VOLTAGE -> "a voltage";
      case CURRENT -> "a current";
      case RESISTANCE -> "a resistance";
      case TEMPERATURE_RATE -> "a change by temperature";
      case DURATION -> "a time";
      case COATING -> "a thickness of a coating";
      case WIRE_SIZE -> "a wire size";
      case NUMBER -> "a number";
    };
  }

  private String example() {
    return switch (dimension) {
      case LENGTH -> "22 ft, 7 1/2 in, 30 mm or 1.2 m";
      case ANGLE -> "4:12 or 18 deg";
      case AREA -> "20 ft² or 1.9 m²";
      case MASS -> "21.5 kg or 47 lb";
      case FORCE -> "180 lbf or 1.2 kN";
      case PRESSURE -> "30 psf or 1.6 kPa";
      case LINE_LOAD -> "40 plf or 600 N/m";
      case UNIT_WEIGHT -> "17.9 pcf or 2 kN/m³";
      case SPEED -> "115 mph or 51 m/s";
      case TEMPERATURE -> "-22 °C or -8 °F";
      case TORQUE -> "12 N m or 100 lbf in";
      case VOLTAGE -> "1000 V";
      case CURRENT -> "15 A";
      case RESISTANCE -> "0.1 ohm";
      case TEMPERATURE_RATE -> "-0.27 %/°C";
      case DURATION -> "30 s or 25 yr";
      case COATING -> "20 µm or 0.8 mil";
      case WIRE_SIZE -> "6 AWG or 16 mm²";
      case NUMBER -> "2.5 or 33 %";
    };
  }
}
