package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.LimitsReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is assumed of rails stands in the units of the job. */
class TakeoffFiguresTest {

  /** 1 ft is 0.3048 m, 1 lb is 0.45359237 kg [computed]. */
  @ParameterizedTest
  @CsvSource({
    "rail-span-most, 4 ft, 1.22 m",
    "rail-cantilever-most, 16 in, 406 mm",
    "rail-stock, 14 ft, 4.27 m",
    "rail-mass-of-a-metre, 0.47 lb/ft, 0.7 kg/m",
    "rail-clamp-mass, 0.18 lb, 0.08 kg",
    "rail-time-of-a-metre, 12.2 s/ft, 40 s/m",
    "rail-splice-time, 90 s, 90 s",
    "rails-per-row, 2, 2"
  })
  void anAssumptionIsPrintedInFeetOrInMetres(String key, String imperial, String metric) {
    assertThat(new TakeoffFigures(true).assumed(LimitsReader.takeoff().get(key)))
        .isEqualTo(imperial);
    assertThat(new TakeoffFigures(false).assumed(LimitsReader.takeoff().get(key)))
        .isEqualTo(metric);
  }
}
