package clampwise.calc.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines with a hundred thousand attachments; apart, because mutation testing leaves them out. */
class BeamSpeedTest {

  /** Far from its ends a long beam carries w L at each support. */
  @Test
  void aHundredThousandSupportsAreSolvedInOneSweep() {
    BeamForces forces = equalSpans(99_999).under(1).result().orElseThrow();
    assertThat(forces.reactionsN()[50_000]).isCloseTo(1, within(1e-9));
    assertThat(forces.reactionsN()[0]).isCloseTo(0.3943376, within(5e-8));
    assertThat(Arrays.stream(forces.reactionsN()).sum()).isCloseTo(99_999, within(1e-6));
  }

  @Test
  void tenTimesAsManySupportsTakeAboutTenTimesAsLong() {
    for (int i = 0; i < 20; i++) {
      secondsFor(10_000);
    }
    double few = Math.max(fastest(20_000), 1e-3);
    assertThat(fastest(200_000)).isLessThan(few * 10 * 5);
  }

  private static double fastest(int supports) {
    double fastest = Double.MAX_VALUE;
    for (int i = 0; i < 5; i++) {
      fastest = Math.min(fastest, secondsFor(supports));
    }
    return fastest;
  }

  private static double secondsFor(int supports) {
    Beam beam = equalSpans(supports - 1);
    long start = System.nanoTime();
    assertThat(beam.under(1).result().orElseThrow().reactionsN()).hasSize(supports);
    return (System.nanoTime() - start) / 1e9;
  }

  @Test
  void aHundredThousandClampsOnOneLineAddUp() {
    int modules = 50_000;
    double[] clamps = new double[2 * modules];
    List<ModuleEdge> edges = new ArrayList<>();
    for (int i = 0; i < modules; i++) {
      clamps[2 * i] = 2.0 * i + 0.3;
      clamps[2 * i + 1] = 2.0 * i + 1.5;
      edges.add(new ModuleEdge(2.0 * i, 2.0 * i + 1.8, 500));
    }
    double[] forces = new ClampLine(clamps).under(edges).reactionsN();
    assertThat(Arrays.stream(forces).sum()).isCloseTo(modules * 900.0, within(1e-3));
  }

  private static Beam equalSpans(int spans) {
    double[] supports = new double[spans + 1];
    Arrays.setAll(supports, i -> i);
    return new Beam(0, spans, supports);
  }
}
