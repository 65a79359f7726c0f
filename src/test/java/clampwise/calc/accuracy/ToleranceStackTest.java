package clampwise.calc.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Worked example of tolerances [computed], and the two cases against thrown dice. */
class ToleranceStackTest {

  private static final int RUNS = 20_000;

  @Test
  void twentyModulesAt2MillimetresAre40InTheWorstCaseAnd8Point9AsRootOfSquares() {
    ToleranceStack stack = new ToleranceStack(0.002);

    assertThat(stack.worstM(20)).isEqualTo(0.040);
    assertThat(stack.likelyM(20)).isCloseTo(0.0089, within(0.00005));
  }

  @Test
  void slackThatIsJustUsedUpIsBorne() {
    assertThat(new ToleranceStack(0.002).mostWorst(0.008)).isEqualTo(4);
    assertThat(new ToleranceStack(0.001).mostWorst(0.003)).isEqualTo(3);
    assertThat(new ToleranceStack(0.002).mostLikely(0.008)).isEqualTo(16);
    assertThat(new ToleranceStack(0.002).mostWorst(0.0079)).isEqualTo(3);
    assertThat(new ToleranceStack(1e-6).mostLikely(10)).isEqualTo(Integer.MAX_VALUE);
  }

  /** With errors of spread t, about 68 % of all runs end within t √n: the rule of squares. */
  @Test
  void twoOfThreeRunsOfNormalErrorsEndWithinTheLikelyStack() {
    Random dice = new Random(20260504);
    for (int modules : new int[] {1, 4, 20}) {
      double likelyM = new ToleranceStack(0.002).likelyM(modules);
      int within = 0;
      for (int run = 0; run < RUNS; run++) {
        within += Math.abs(sumM(dice, modules)) <= likelyM ? 1 : 0;
      }
      assertThat((double) within / RUNS).isCloseTo(0.683, within(0.015));
    }
  }

  private static double sumM(Random dice, int modules) {
    double sumM = 0;
    for (int i = 0; i < modules; i++) {
      sumM += dice.nextGaussian() * 0.002;
    }
    return sumM;
  }

  @Test
  void noRunOfErrorsWithinTheToleranceExceedsTheWorstStack() {
    Random dice = new Random(4);
    ToleranceStack stack = new ToleranceStack(0.002);
    for (int run = 0; run < RUNS; run++) {
      double sumM = 0;
      for (int i = 1; i <= 12; i++) {
        sumM += (dice.nextDouble() * 2 - 1) * 0.002;
        assertThat(Math.abs(sumM)).isLessThanOrEqualTo(stack.worstM(i));
      }
    }
  }

  @Test
  void theLikelyStackNeverExceedsTheWorst() {
    ToleranceStack stack = new ToleranceStack(0.003);
    for (int modules = 1; modules < 200; modules++) {
      assertThat(stack.likelyM(modules)).isLessThanOrEqualTo(stack.worstM(modules));
      assertThat(stack.likelyM(modules)).isLessThan(stack.likelyM(modules + 1));
    }
  }
}
