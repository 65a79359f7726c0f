package clampwise.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetCoatingTest {

  /** G90 is 275 g/m², handbook example 3.8 [read]; the others from memory of ASTM A653. */
  @ParameterizedTest
  @CsvSource({"G90, 275", "g 90, 275", "Z275, 275", "G185, 550", "Z-100, 100"})
  void designationsOfZincGiveItsMass(String written, double grams) {
    SheetCoating coating = SheetCoating.of(written).orElseThrow();
    assertThat(coating.isZinc()).isTrue();
    assertThat(coating.gramsPerM2(TablesReader.read("metals.yaml").get("zinc-coatings")))
        .contains(grams);
  }

  @ParameterizedTest
  @ValueSource(strings = {"AZ50", "az 55", "AZM150", "55 % Al-Zn"})
  void otherDesignationsAreAlZn(String written) {
    assertThat(SheetCoating.of(written)).isPresent().get().matches(coating -> !coating.isZinc());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "G", "ZM310", "paint", "90"})
  void whatTheProgramDoesNotKnowIsNoCoating(String written) {
    assertThat(SheetCoating.of(written)).isEmpty();
  }

  @Test
  void aMassThatIsInNoTableIsNotGuessed() {
    assertThat(
            SheetCoating.of("G77")
                .orElseThrow()
                .gramsPerM2(TablesReader.read("metals.yaml").get("zinc-coatings")))
        .isEmpty();
  }
}
