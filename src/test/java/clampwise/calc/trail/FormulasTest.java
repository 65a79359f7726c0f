package clampwise.calc.trail;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.units.Unit;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FormulasTest {

  @Test
  void everydayNumbersLookAsDecimalArithmeticPrintsThem() {
    Random random = new Random(3);
    for (int i = 0; i < 100_000; i++) {
      double few = random.nextInt(2_000_000) / Math.pow(10, random.nextInt(7));
      double many = random.nextGaussian() * Math.pow(10, random.nextInt(12) - 6);

      assertThat(Formulas.number(few)).isEqualTo(Formulas.exactly(few));
      assertThat(Formulas.number(many)).isEqualTo(Formulas.exactly(many));
    }
  }

  @Test
  void aNumberOfACodeIsWrittenAsOneWouldKeyItIn() {
    assertThat(Formulas.number(0.6)).isEqualTo("0.6");
    assertThat(Formulas.number(-4)).isEqualTo("-4");
    assertThat(Formulas.number(0)).isEqualTo("0");
    assertThat(Formulas.number(1 / 3.0)).isEqualTo("0.3333333333");
    assertThat(Formulas.number(1.19e-8)).isEqualTo("0.0000000119");
  }

  @Test
  void theGapsOfAFormulaAreFilledInTheirOrder() {
    assertThat(Formulas.filled("min(%s*h,%s)/2", "0.4", "l")).isEqualTo("min(0.4*h,l)/2");
    assertThat(Formulas.filled("q*G")).isEqualTo("q*G");
  }

  @Test
  void aFootOfTheCodeIsWrittenInMetresWhereMetresArePrinted() {
    assertThat(Formulas.of(new Work(Measure.METRIC)).in(Unit.FOOT, "z")).isEqualTo("(z/0.3048)");
    assertThat(Formulas.of(new Work(Measure.IMPERIAL)).in(Unit.FOOT, "z")).isEqualTo("z");
  }
}
