package clampwise.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class QuickDecimalsTest {

  @Test
  void printsWhatDecimalArithmeticPrints() {
    Random random = new Random(7);
    int easy = 0;
    for (int i = 0; i < 200_000; i++) {
      int decimals = random.nextInt(10);
      double x = random.nextGaussian() * Math.pow(10, random.nextInt(16) - 8);
      var quick = QuickDecimals.trimmed(x, decimals);
      easy += quick.isPresent() ? 1 : 0;
      quick.ifPresent(
          text -> assertThat(text).isEqualTo(QuantityPrint.exactly(x, decimals)).isNotEmpty());
    }
    assertThat(easy).isGreaterThan(100_000);
  }

  @Test
  void printsHundredthsAndTheirHalvesAsDecimalArithmeticDoes() {
    for (int thousandths = -20_000; thousandths <= 20_000; thousandths++) {
      double x = thousandths / 1000.0;
      for (int decimals = 0; decimals < 4; decimals++) {
        assertThat(QuantityPrint.trimmed(x, decimals))
            .isEqualTo(QuantityPrint.exactly(x, decimals));
      }
    }
  }

  @Test
  void leavesTiesAndHugeNumbersToDecimalArithmetic() {
    assertThat(QuickDecimals.trimmed(0.125, 2)).isEmpty();
    assertThat(QuickDecimals.trimmed(1e9, 0)).isEmpty();
    assertThat(QuickDecimals.trimmed(1, 10)).isEmpty();
    assertThat(QuickDecimals.trimmed(Double.NaN, 2)).isEmpty();
  }

  @Test
  void aNumberRoundedToNothingHasNoSign() {
    assertThat(QuickDecimals.trimmed(-0.001, 2)).contains("0");
  }
}
