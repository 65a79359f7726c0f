package clampwise.calc.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WholeNumbersTest {

  /** 2 to 5 % of spares: common practice, no source; the rounding is worked by hand. */
  @ParameterizedTest
  @CsvSource({
    "100, 0.02, 2",
    "100, 0.05, 5",
    "101, 0.02, 3",
    "1, 0.05, 1",
    "60, 0.03, 2",
    "40, 0.025, 1",
    "0, 0.05, 0",
    "56, 0, 0"
  })
  void sparesAreTheNextWholeNumberFromTheirShare(int count, double share, int spares) {
    assertThat(WholeNumbers.spares(count, share)).isEqualTo(spares);
  }

  /** 26 to 36 modules a pallet: from memory. */
  @ParameterizedTest
  @CsvSource({"40, 26, 2", "40, 36, 2", "72, 36, 2", "73, 36, 3", "26, 26, 1", "0, 36, 0"})
  void theLastPalletCountsThoughItIsNotFull(int modules, int inEach, int pallets) {
    assertThat(WholeNumbers.packs(modules, inEach)).isEqualTo(pallets);
  }

  @Test
  void moreOfAPartNeverMeansFewerSpares() {
    for (int count = 0; count < 500; count++) {
      assertThat(WholeNumbers.spares(count + 1, 0.03))
          .isBetween(WholeNumbers.spares(count, 0.03), WholeNumbers.spares(count, 0.03) + 1);
    }
  }
}
