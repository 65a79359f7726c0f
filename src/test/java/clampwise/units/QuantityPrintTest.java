package clampwise.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityPrintTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "30 mm|30 mm",
        "234.26 mm|234.3 mm",
        "0.607 mm|0.607 mm",
        "0.25 in|1/4 in",
        "7 1/2 in|7 1/2 in",
        "24 in|24 in",
        "7.33 in|7.33 in",
        "0.0239 in|0.0239 in",
        "31' 7.5\"|31 ft 7.5 in",
        "22 ft|22 ft",
        "0.5 ft|6 in",
        "-1.5 ft|-1 ft 6 in",
        "0 ft|0 ft",
        "1.7220 m|1.722 m"
      })
  void lengthsArePrintedAsWritten(String written, String printed) {
    assertThat(reprint(written, Dimension.LENGTH)).isEqualTo(printed);
  }

  @ParameterizedTest
  @CsvSource({
    "30 psf, PRESSURE, 30 psf",
    "1600 Pa, PRESSURE, 1600 Pa",
    "2.4 kPa, PRESSURE, 2.4 kPa",
    "4:12, ANGLE, 4:12",
    "18.43 deg, ANGLE, 18.4 deg",
    "5 %, ANGLE, 5 %",
    "6 AWG, WIRE_SIZE, 6 AWG",
    "1 AWG, WIRE_SIZE, 1 AWG",
    "1/0 AWG, WIRE_SIZE, 1/0 AWG",
    "2/0 AWG, WIRE_SIZE, 2/0 AWG",
    "4/0 AWG, WIRE_SIZE, 4/0 AWG",
    "13.3 mm2, WIRE_SIZE, 13.3 mm²",
    "-8 F, TEMPERATURE, -8 °F",
    "1:500, NUMBER, 1:500",
    "0:500, NUMBER, 0:500",
    "-1:500, NUMBER, -1:500",
    "2.5, NUMBER, 2.5",
    "33 %, NUMBER, 33 %"
  })
  void otherQuantitiesArePrintedAsWritten(String written, Dimension dimension, String printed) {
    assertThat(reprint(written, dimension)).isEqualTo(printed);
  }

  @Test
  void inchesThatRoundToTwelveBecomeAFoot() {
    assertThat(QuantityPrint.text(0.3048 * 32 - 1e-6, Unit.FOOT)).isEqualTo("32 ft");
  }

  @Test
  void aTinyNegativeIsPrintedAsZero() {
    assertThat(QuantityPrint.text(-1e-12, Unit.MILLIMETRE)).isEqualTo("0 mm");
    assertThat(QuantityPrint.text(-1e-12, Unit.FOOT)).isEqualTo("0 ft");
  }

  @Test
  void twoLengthsThatDifferAreNeverPrintedAlike() {
    assertThat(QuantityPrint.pair(0.2340, 0.23396, Unit.MILLIMETRE))
        .isEqualTo(new QuantityPrint.Pair("234 mm", "233.96 mm"));
    assertThat(QuantityPrint.pair(0.00635, 0.0064, Unit.INCH))
        .isEqualTo(new QuantityPrint.Pair("0.25 in", "0.252 in"));
    assertThat(QuantityPrint.pair(1, 1 + 1e-10, Unit.METRE))
        .isEqualTo(new QuantityPrint.Pair("1 m", "1.0000000001 m"));
  }

  @Test
  void otherPairsThatDifferAreNotPrintedAlikeEither() {
    Unit twelfths = Scale.ratio(Dimension.ANGLE, 12);
    assertThat(QuantityPrint.pair(Math.atan2(4, 12), Math.atan2(4.001, 12), twelfths))
        .isEqualTo(new QuantityPrint.Pair("4:12", "4.001:12"));
    assertThat(QuantityPrint.pair(14.00e-6, 14.04e-6, Units.AWG))
        .isEqualTo(new QuantityPrint.Pair("14 mm²", "14.04 mm²"));
  }

  @Test
  void twoInchesStandAsFractionsOnlyIfATapeShowsBoth() {
    assertThat(QuantityPrint.pair(0.25 * 0.0254, 0.5 * 0.0254, Unit.INCH))
        .isEqualTo(new QuantityPrint.Pair("1/4 in", "1/2 in"));
    assertThat(QuantityPrint.pair(0.25 * 0.0254, 2 * 0.0254, Unit.INCH))
        .isEqualTo(new QuantityPrint.Pair("1/4 in", "2 in"));
    assertThat(QuantityPrint.pair(0.25 * 0.0254, 0.3 * 0.0254, Unit.INCH))
        .isEqualTo(new QuantityPrint.Pair("0.25 in", "0.3 in"));
  }

  @Test
  void significantDigitsAreCountedFromTheFirstThatIsNotZero() {
    assertThat(QuantityPrint.significant(0.000123456, 3)).isEqualTo("0.000123");
    assertThat(QuantityPrint.significant(123456, 3)).isEqualTo("123000");
    assertThat(QuantityPrint.significant(2.50, 4)).isEqualTo("2.5");
    assertThat(QuantityPrint.significant(0, 3)).isEqualTo("0");
  }

  @Test
  void numbersArePrintedTheSameInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(QuantityPrint.text(1.7225, Unit.MILLIMETRE)).isEqualTo("1722.5 mm");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void whatIsPrintedReadsBackToTheSameValue() {
    Random random = new Random(7);
    for (Unit unit : Units.all()) {
      for (int i = 0; i < 200; i++) {
        double si = Scale.toSi(Math.rint(random.nextDouble() * 500) / 4, unit);
        assertReadsBack(si, unit);
      }
    }
  }

  @Test
  void comparedPairsDifferWhereverTheValuesDifferByAMicrometre() {
    Random random = new Random(8);
    for (Unit unit : List.of(Unit.MILLIMETRE, Unit.INCH, Unit.FOOT, Unit.METRE)) {
      for (int i = 0; i < 300; i++) {
        double a = random.nextDouble() * 40;
        QuantityPrint.Pair pair = QuantityPrint.pair(a, a + 1e-6, unit);
        assertThat(pair.first()).isNotEqualTo(pair.second());
      }
    }
  }

  private static void assertReadsBack(double si, Unit unit) {
    String printed = QuantityPrint.text(si, unit);
    Parsed read = QuantityText.parse(printed, unit.dimension(), Optional.empty());
    assertThat(read).as(printed).isInstanceOf(Parsed.Value.class);
    double step = unit.factor() * Math.pow(10, -Decimals.of(unit));
    assertThat(((Parsed.Value) read).si()).as(printed).isCloseTo(si, within(step * 0.51 + 1e-9));
  }

  private static String reprint(String written, Dimension dimension) {
    Parsed.Value value = (Parsed.Value) QuantityText.parse(written, dimension, Optional.empty());
    return QuantityPrint.text(value.si(), value.unit());
  }
}
