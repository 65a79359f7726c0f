package clampwise.calc;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A row of a hundred thousand modules; apart, because mutation testing leaves it out. */
class SeamPhaseSpeedTest {

  @Test
  void aHundredThousandModulesAreSweptWithinSeconds() {
    SeamPhase row =
        SeamPhase.uniform(
            SeamPositions.nominal(0, 0.4572),
            new ClampedEdge(1.722, new Interval(0.150, 0.500)),
            0.012,
            100_000);
    long before = System.nanoTime();
    PhaseSweep sweep = row.sweep(new Interval(0, 0.4572));
    assertThat(sweep.best()).isBetween(1, 100_000);
    assertThat(System.nanoTime() - before).isLessThan(10_000_000_000L);
  }
}
