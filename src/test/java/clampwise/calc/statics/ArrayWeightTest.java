package clampwise.calc.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ArrayWeightTest {

  /** Handbook 3.8 [computed]: 21.5 kg = 210.8 N. */
  @Test
  void aModuleOfTheHandbookWeighsWhatItSays() {
    assertThat(ArrayWeight.ofMass(21.5).n()).isCloseTo(210.8, within(0.05));
  }

  @Test
  void theClampsOfBothEdgesCarryTheWholeWeight() {
    ArrayWeight weight = ArrayWeight.ofMass(22.5);

    assertThat(2 * 3 * weight.perClampN(3)).isCloseTo(weight.n(), within(1e-9));
  }

  /** 210.8 N on 1.722 by 1.134 m, by hand: 107.97 Pa; on twice the area half of it. */
  @Test
  void theLoadIsTheWeightOverTheArea() {
    ArrayWeight weight = ArrayWeight.ofMass(21.5);

    assertThat(weight.pressurePa(1.722 * 1.134)).isCloseTo(107.97, within(0.005));
    assertThat(weight.pressurePa(2 * 1.722 * 1.134)).isCloseTo(107.97 / 2, within(0.005));
  }
}
