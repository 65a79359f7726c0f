package clampwise.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "22 ft|6.7056",
        "31 ft 7 1/2 in|9.6393",
        "31'-7 1/2\"|9.6393",
        "31' 7-1/2\"|9.6393",
        "31′ 7½″|9.6393",
        "31 ft, 7.5 in|9.6393",
        "7 1/2 in|0.1905",
        "5/8 in|0.015875",
        "½ in|0.0127",
        "1.2 m|1.2",
        "30mm|0.03",
        "30 MM|0.03",
        "1,722 mm|1.722",
        "1 722 mm|1.722",
        "12,345.5 mm|12.3455",
        ".5 in|0.0127",
        "6 in.|0.1524",
        "-3 mm|-0.003",
        "−3 mm|-0.003",
        "1 m 20 cm|1.2",
        "-1 ft 6 in|-0.4572",
        "- 3 mm|-0.003",
        "+3 mm|0.003",
        "\u00a022 ft|6.7056",
        "123,456 mm|123.456",
        "123 456 mm|123.456",
        "1 234 567 mm|1234.567",
        "7 ½ in|0.1905",
        "7 1000/2000 in|0.1905",
        "6 ft2in|1.8796",
        "1m20cm|1.2"
      })
  void lengthsAreReadAsPeopleWriteThem(String text, double metres) {
    assertThat(si(text, Dimension.LENGTH)).isCloseTo(metres, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "115 mph, SPEED, 51.4096",
    "30 psf, PRESSURE, 1436.4",
    "2.4 kPa, PRESSURE, 2400",
    "1.6 kN/m², PRESSURE, 1600",
    "25 lb/ft2, PRESSURE, 1197",
    "180 lbf, FORCE, 800.68",
    "180 lbs, FORCE, 800.68",
    "1.2 kN, FORCE, 1200",
    "21.5 kg, MASS, 21.5",
    "47 lb, MASS, 21.319",
    "12 N m, TORQUE, 12",
    "12 N·m, TORQUE, 12",
    "100 lbf in, TORQUE, 11.2985",
    "100 in-lb, TORQUE, 11.2985",
    "10 ft-lb, TORQUE, 13.5582",
    "-22 °C, TEMPERATURE, -22",
    "-8 F, TEMPERATURE, -22.222",
    "49.5 V, VOLTAGE, 49.5",
    "15 A, CURRENT, 15",
    "33 %, NUMBER, 0.33",
    "1:500, NUMBER, 0.002",
    "1/3, NUMBER, 0.33333",
    "2.5, NUMBER, 2.5",
    "20 sq ft, AREA, 1.858",
    "2 kN/m3, UNIT_WEIGHT, 2000"
  })
  void otherQuantitiesAreReadAsPeopleWriteThem(String text, Dimension dimension, double si) {
    assertThat(si(text, dimension)).isCloseTo(si, within(Math.abs(si) * 5e-5));
  }

  /** Slopes of handbook table 2.12 [computed]. */
  @ParameterizedTest
  @CsvSource({
    "3:12, 14.04",
    "4:12, 18.43",
    "4/12, 18.43",
    "6:12, 26.57",
    "12:12, 45.00",
    "1/4:12, 1.19",
    "4 : 12, 18.43",
    "5:12.5, 21.80",
    "18 deg, 18",
    "18°, 18",
    "100 %, 45"
  })
  void slopesAreReadAsPitchPercentOrDegrees(String text, double degrees) {
    assertThat(Math.toDegrees(si(text, Dimension.ANGLE))).isCloseTo(degrees, within(0.005));
  }

  /** Cross-sections of handbook table 2.11 [computed]; 4/0 and 40 of ASTM B258, from memory. */
  @ParameterizedTest
  @CsvSource({
    "14 AWG, 2.08",
    "12 AWG, 3.31",
    "10 AWG, 5.26",
    "8 AWG, 8.37",
    "6 AWG, 13.3",
    "4 AWG, 21.2",
    "3 AWG, 26.7",
    "2 AWG, 33.6",
    "1 AWG, 42.4",
    "1/0 AWG, 53.5",
    "4/0 AWG, 107.2",
    "40 AWG, 0.005",
    "13.3 mm², 13.3",
    "13.3 mm2, 13.3"
  })
  void wireSizesAreReadInGaugeOrSquareMillimetres(String text, double mm2) {
    assertThat(si(text, Dimension.WIRE_SIZE) * 1e6).isCloseTo(mm2, within(0.05));
  }

  @Test
  void aGaugeKeepsItsNumber() {
    assertThat(QuantityText.parseThickness("24 ga", Optional.empty()))
        .isEqualTo(new Parsed.Value(24, Units.GAUGE));
    assertThat(QuantityText.parseThickness("0.032 in", Optional.empty()))
        .isEqualTo(new Parsed.Value(0.032 * 0.0254, Unit.INCH));
  }

  @Test
  void aBareNumberTakesTheDeclaredUnit() {
    assertThat(QuantityText.parse("12", Dimension.LENGTH, Optional.of(Unit.INCH)))
        .isEqualTo(new Parsed.Value(0.0254 * 12, Unit.INCH));
  }

  @Test
  void aBareNumberWithoutDeclaredUnitIsAFault() {
    assertThat(fault("12", Dimension.LENGTH).found()).isEqualTo("\"12\" without a unit");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,5 m",
        "0,255 m",
        "1,722 m",
        "1.722,5 mm",
        "12,34 mm",
        "0,607 mm",
        ",5 in",
        ",500 in",
        ".5,000 in",
        "1234,567 mm"
      })
  void aCommaThatMayBeDecimalIsRefused(String text) {
    assertThat(fault(text, Dimension.LENGTH).found()).contains("comma may part");
  }

  @ParameterizedTest
  @CsvSource({
    "abc, LENGTH",
    "'', LENGTH",
    "22 ft 3 ft, LENGTH",
    "7 in 2 ft, LENGTH",
    "1..2 m, LENGTH",
    "3/0 in, LENGTH",
    "20 ft 6, LENGTH",
    "10.5 AWG, WIRE_SIZE",
    "-6 AWG, WIRE_SIZE",
    "4:0, ANGLE",
    "4:12:3, ANGLE",
    "4:12, LENGTH",
    "1 / 2 in, LENGTH",
    "1.5 222 mm, LENGTH",
    "1 22 mm, LENGTH",
    "7 6 in, LENGTH",
    "7-6 in, LENGTH",
    "4/0, ANGLE",
    "4:twelve, ANGLE",
    "4:, ANGLE",
    "4:1.2.3, ANGLE",
    "5/0 AWG, WIRE_SIZE",
    "41 AWG, WIRE_SIZE"
  })
  void whatIsNoQuantityIsAFaultWithAnExample(String text, Dimension dimension) {
    assertThat(fault(text, dimension).expected()).contains("such as");
  }

  @Test
  void aDeclaredUnitOfAnotherKindDoesNotHelpABareNumber() {
    assertThat(QuantityText.parse("12", Dimension.LENGTH, Optional.of(Units.PSF)))
        .isInstanceOf(Parsed.Fault.class);
  }

  private static double si(String text, Dimension dimension) {
    return ((Parsed.Value) QuantityText.parse(text, dimension, Optional.empty())).si();
  }

  private static Parsed.Fault fault(String text, Dimension dimension) {
    return (Parsed.Fault) QuantityText.parse(text, dimension, Optional.empty());
  }
}
