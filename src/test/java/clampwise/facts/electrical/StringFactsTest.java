package clampwise.facts.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.trail.Line;
import clampwise.catalogue.Limit;
import clampwise.facts.BaseJob;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strings of the wired roof: modules of 60 V at -25 °C. */
class StringFactsTest {

  /** Handbook example 3.2: 49.5 V, -0.27 %/°C, -10 °C; twelve in series reach 650.13 V. */
  private static final String HANDBOOK =
      """
      site: {lowest-temperature: -10 °C}
      modules: {M30: {electrical: {voc: 49.5 V, voc-coefficient: -0.27 %/°C}}}
      electrical: {strings: {S: {in-series: 12, count: 1}}}
      """;

  @Test
  void twelveInSeriesOnAHouseAreOneTooManyAsInHandbookExample32() {
    StringVoltage voltage = job(HANDBOOK).only(StringVoltage.class);

    assertThat(voltage.voltageV()).isCloseTo(650.13, within(0.005));
    assertThat(voltage.limitV()).isEqualTo(600);
    assertThat(voltage.fitting()).isEqualTo("11 in series");
    assertThat(voltage.method()).isEqualTo("by -0.27 %/°C");
    assertThat(voltage.limitFrom()).map(Limit::clause).contains("690.7");
  }

  @Test
  void theWorkOfAVoltageEndsWithIt() {
    StringVoltage voltage = job(HANDBOOK).only(StringVoltage.class);
    List<Line> lines = voltage.chain().orElseThrow().sections().get(0).lines();

    assertThat(lines)
        .extracting(line -> line.result().symbol())
        .containsExactly("k_T", "V_m", "V_s");
    assertThat(lines.get(2).result().si()).isCloseTo(650.13, within(0.005));
  }

  /** 600 V in dwellings, 1000 V in other buildings [2nd]; other codes from memory. */
  @ParameterizedTest
  @CsvSource({
    "nec-2017, dwelling, 600",
    "nec-2020, dwelling, 600",
    "nec-2023, dwelling, 600",
    "nec-2017, other, 1000",
    "nec-2023, other, 1000",
    "iec-62548, dwelling, 1000",
    "bs-7671, dwelling, 1000",
    "as-nzs-5033, dwelling, 1000",
    "as-nzs-5033, other, 1500"
  })
  void theBuildingLimitsTheVoltageByCode(String code, String occupancy, double limit) {
    String over =
        """
        electrical: {code: %s, occupancy: %s, inverter-voltage-at-most: 2 kV}
        modules: {M30: {electrical: {system-voltage-at-most: 2 kV}}}
        """;
    StringVoltage voltage = job(over.formatted(code, occupancy)).only(StringVoltage.class);

    assertThat(voltage.limitV()).isEqualTo(limit);
    assertThat(voltage.limitBy()).endsWith("under " + code);
  }

  @ParameterizedTest
  @CsvSource({"400 V, 1000 V, 400, inverters", "1000 V, 380 V, 380, module M30"})
  void theLeastOfAllLimitsCounts(String inverter, String module, double limit, String by) {
    String over =
        """
        electrical: {inverter-voltage-at-most: %s}
        modules: {M30: {electrical: {system-voltage-at-most: %s}}}
        """;
    StringVoltage voltage = job(over.formatted(inverter, module)).only(StringVoltage.class);

    assertThat(voltage.limitV()).isEqualTo(limit);
    assertThat(voltage.limitBy()).contains(by);
  }

  /** Handbook 3.12: ambient -20 and -21 °C; table 690.7(A) of the NEC [memory]. */
  @ParameterizedTest
  @CsvSource({"-20 °C, 1.18", "-20.5 °C, 1.20", "-21 °C, 1.20", "-4 °F, 1.18"})
  void withoutACoefficientTheTableIsReadByWholeDegrees(String lowest, double factor) {
    String over =
        """
        site: {lowest-temperature: %s}
        modules: {M30: {electrical: {voc-coefficient: ~}}}
        """;
    StringVoltage voltage = job(over.formatted(lowest)).only(StringVoltage.class);

    assertThat(voltage.voltageV()).isCloseTo(6 * 50 * factor, within(1e-6));
    assertThat(voltage.method()).isEqualTo("by table 690.7(A)");
  }

  @Test
  void theTableOfTheNecIsNotUsedUnderAnotherCode() {
    String over =
        "electrical: {code: iec-62548}\nmodules: {M30: {electrical: {voc-coefficient: ~}}}";

    assertThat(job(over).facts(StringVoltage.class)).isEmpty();
    assertThat(job(over).missing(StringVoltage.class))
        .containsExactly(
            "the temperature coefficient of module M30 is not given (electrical: voc-coefficient)");
  }

  @Test
  void aLimitThatIsNotGivenLeavesTheStringUncheckedUnlessAnotherIsExceeded() {
    String open = "electrical: {inverter-voltage-at-most: ~}";
    String long11 =
        "electrical: {inverter-voltage-at-most: ~, strings: {S: {in-series: 11, count: 1}}}";

    assertThat(job(open).missing(StringVoltage.class))
        .containsExactly(
            "the highest voltage of the inverters is not given (electrical: inverter-voltage-at-most)");
    assertThat(job(long11).only(StringVoltage.class).limitV()).isEqualTo(600);
  }

  @Test
  void theCodeOfTheSiteStandsWhereTheStringsNameNone() {
    String over = "site: {codes: {electrical: NEC 2017}}\nelectrical: {code: ~}";

    assertThat(job(over).only(StringVoltage.class).limitBy()).endsWith("under nec-2017");
  }

  @Test
  void aCodeThatNobodyKnowsLeavesTheTopicUnchecked() {
    String over = "site: {codes: {electrical: local rules}}\nelectrical: {code: ~}";

    assertThat(job(over).missing(StringVoltage.class))
        .containsExactly(
            "the job names no electrical code that the program knows (site: codes: electrical)");
    assertThat(job(over).missing(LabelNeeded.class)).hasSize(1);
    assertThat(job(over).missing(ArcProtection.class)).hasSize(1);
  }

  @Test
  void modulesOfAFieldThatNoStringNamesAreCountedAsLeftOff() {
    String over =
        """
        fields:
          B: {like: A, block: {at: [60 ft, 8 ft], rows: 1, columns: 2}}
        """;

    assertThat(job(over).facts(StringTally.class))
        .extracting(StringTally::field, StringTally::strung, StringTally::placed)
        .containsExactly(tuple("A", 12, 12), tuple("B", 0, 2));
  }

  @Test
  void aJobWithoutAWordOnTheTopicGivesOneReason() {
    BaseJob silent = job("electrical: ~");

    assertThat(silent.missing(StringVoltage.class))
        .containsExactly(
            "the job says nothing about strings, conductors and their protection (electrical)");
    assertThat(silent.missing(LugWire.class)).isEqualTo(silent.missing(StringVoltage.class));
    assertThat(silent.facts(GroundingSize.class)).isEmpty();
    assertThat(silent.missing(VoltageClaim.class)).isEmpty();
    assertThat(
            job("electrical: ~\nclaims: {string-voltages: {S: 300 V}}").missing(VoltageClaim.class))
        .hasSize(1);
  }

  private static BaseJob job(String over) {
    return BaseJob.with("wired-roof", over);
  }
}
