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

  @Test
  void twiceTheAreaHalvesTheLoad() {
    ArrayWeight weight = ArrayWeight.ofMass(22.5);

    assertThat(2 * weight.pressurePa(4)).isCloseTo(weight.pressurePa(2), within(1e-9));
  }
}
