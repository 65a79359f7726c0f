package clampwise.calc.trail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.units.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MeasureTest {

  @ParameterizedTest
  @EnumSource
  void aPressureTimesAnAreaIsAForceOfTheSameSet(Measure measure) {
    double pressure = measure.of(Dimension.PRESSURE).factor();
    double area = measure.of(Dimension.AREA).factor();
    assertThat(pressure * area).isCloseTo(measure.of(Dimension.FORCE).factor(), within(1e-9));
  }

  @ParameterizedTest
  @EnumSource
  void aLineLoadTimesALengthIsAForceOfTheSameSet(Measure measure) {
    double load = measure.of(Dimension.LINE_LOAD).factor();
    double length = measure.of(Dimension.LENGTH).factor();
    assertThat(load * length).isCloseTo(measure.of(Dimension.FORCE).factor(), within(1e-9));
    assertThat(measure.of(Dimension.FORCE).factor() * length)
        .isCloseTo(measure.of(Dimension.TORQUE).factor(), within(1e-9));
  }

  @Test
  void aUnitWeightTimesADepthIsAPressureOfTheSameSet() {
    for (Measure measure : Measure.values()) {
      double weight = measure.of(Dimension.UNIT_WEIGHT).factor();
      double depth = measure.of(Dimension.LENGTH).factor();
      assertThat(weight * depth).isCloseTo(measure.of(Dimension.PRESSURE).factor(), within(1e-9));
    }
  }
}
