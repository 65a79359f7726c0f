package clampwise.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StandoffTest {

  private static final double DECAY_M = 0.061;

  private static double at(Standoff standoff, double gapM) {
    return standoff.temperatureAt(DECAY_M, gapM, Source.STATICS, Work.unread()).si();
  }

  /** Handbook example 3.11: 3.49 cm keep the module at 70 °C [read, recomputed]. */
  @Test
  void theGapOfHandbookExample311GivesSeventyDegrees() {
    assertThat(at(new Standoff(82.574, 53.716), 0.0349)).isCloseTo(70, within(0.01));
  }

  @Test
  void gapAndTemperatureAreEachOthersInverse() {
    Random random = new Random(11);
    for (int n = 0; n < 300; n++) {
      double openC = 40 + 29 * random.nextDouble();
      double insulatedC = 71 + 30 * random.nextDouble();
      Standoff standoff = new Standoff(insulatedC, openC);
      double gapM =
          standoff
              .show(DECAY_M, 70, Source.STATICS, Work.unread())
              .result()
              .map(Term::si)
              .orElseThrow();
      assertThat(at(standoff, gapM)).isCloseTo(70, within(1e-9));
      assertThat(at(standoff, gapM + 0.01)).isBetween(openC, 70.0);
      assertThat(at(standoff, 0)).isCloseTo(insulatedC, within(1e-9));
    }
  }
}
