package clampwise.calc.corrosion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.corrosion.CorrosionLoss.Later;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Recomputed;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Work;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CorrosionLossTest {

  private static final double MICROMETRE = 1e-6;
  private static final double ZINC = 0.813;

  private static CorrosionLoss zinc(double micrometres) {
    return new CorrosionLoss(micrometres * MICROMETRE, ZINC, 20, Source.STATICS);
  }

  /** Handbook example 3.8: zinc over 25 years by the power law of ISO 9224 [computed]. */
  @ParameterizedTest
  @CsvSource({"1.5, 20.5", "3.0, 41.1", "6.0, 82.2"})
  void zincGoesAsInHandbookExample38(double rate, double printed) {
    double loss = zinc(rate).lossM(25, Later.POWER);
    assertThat(loss / MICROMETRE).isCloseTo(printed, within(0.05));
  }

  /** Handbook example 3.8: G90 is 275 g/m² on both sides, 19.3 µm on one [computed]. */
  @Test
  void g90IsAsThickAsInHandbookExample38() {
    assertThat(new ZincCoating(275).sideM(7140) / MICROMETRE).isCloseTo(19.3, within(0.05));
  }

  @Test
  void theSteadyLossGoesOnWhereThePowerLawEndsAndIsTheSevererOne() {
    CorrosionLoss loss = zinc(2);
    assertThat(loss.lossM(20, Later.STEADY)).isEqualTo(loss.lossM(20, Later.POWER));
    double step = 1e-6;
    double slope = (loss.lossM(20 + step, Later.STEADY) - loss.lossM(20, Later.STEADY)) / step;
    double before = (loss.lossM(20, Later.POWER) - loss.lossM(20 - step, Later.POWER)) / step;
    assertThat(slope).isCloseTo(before, within(1e-12));
    assertThat(loss.lossM(40, Later.STEADY)).isGreaterThan(loss.lossM(40, Later.POWER));
  }

  @Test
  void aCoatingLastsUntilTheLossIsItsThickness() {
    Random random = new Random(5);
    for (int n = 0; n < 500; n++) {
      CorrosionLoss loss = zinc(0.1 + 8 * random.nextDouble());
      double years = 0.5 + 80 * random.nextDouble();
      for (Later later : Later.values()) {
        double lost = loss.lossM(years, later);
        assertThat(loss.years(lost, later)).isCloseTo(years, within(1e-9 * years));
        assertThat(loss.lossM(years + 1, later)).isGreaterThan(lost);
        assertThat(zinc(2 * loss.firstYearM() / MICROMETRE).lossM(years, later))
            .isCloseTo(2 * lost, within(1e-15));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"12, STEADY", "25, STEADY", "25, POWER"})
  void everyLineCanBeFollowed(double years, Later later) {
    for (Measure measure : Measure.values()) {
      Work work = new Work(measure);
      new ZincCoating(350).show(7140, Source.STATICS, work);
      zinc(1.4).show(years, later, work);
      Recomputed.check(work);
    }
  }
}
