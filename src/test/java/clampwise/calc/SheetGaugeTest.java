package clampwise.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.SheetGauge.Sheet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetGaugeTest {

  private static final List<Integer> GAUGES = List.of(20, 22, 24, 26, 28, 29, 30);

  /** Handbook table 2.6, column in mm (20 ga second-hand, 30 ga read, else from memory). */
  @ParameterizedTest
  @CsvSource({
    "20, 0.912, 1.006",
    "22, 0.759, 0.853",
    "24, 0.607, 0.701",
    "26, 0.455, 0.551",
    "28, 0.378, 0.475",
    "29, 0.343, 0.437",
    "30, 0.305, 0.399"
  })
  void steelGaugesAreTheMillimetresOfHandbookTable26(int gauge, double base, double galvanised) {
    assertThat(mm(gauge, Sheet.STEEL_BASE)).isCloseTo(base, within(6e-4));
    assertThat(mm(gauge, Sheet.GALVANISED_TOTAL)).isCloseTo(galvanised, within(6e-4));
  }

  /** Manufacturers' standard gauge: 41.82 lb/ft² per inch of steel; 20 ga weighs 1.5 lb/ft². */
  @Test
  void twentyGaugeSteelWeighsOnePointFivePoundsASquareFoot() {
    assertThat(mm(20, Sheet.STEEL_BASE) / 25.4 * 41.82).isCloseTo(1.5, within(0.002));
  }

  @Test
  void aHigherGaugeIsThinnerInEveryMetal() {
    for (Sheet sheet : Sheet.values()) {
      assertThat(GAUGES.stream().map(g -> mm(g, sheet)).toList())
          .isSortedAccordingTo((a, b) -> Double.compare(b, a))
          .doesNotHaveDuplicates();
    }
  }

  @Test
  void aGaugeOutsideTheTableHasNoThickness() {
    assertThat(SheetGauge.thicknessM(23, Sheet.STEEL_BASE)).isEmpty();
    assertThat(SheetGauge.thicknessM(24.5, Sheet.STEEL_BASE)).isEmpty();
  }

  private static double mm(int gauge, Sheet sheet) {
    return SheetGauge.thicknessM(gauge, sheet).orElseThrow() * 1e3;
  }
}
