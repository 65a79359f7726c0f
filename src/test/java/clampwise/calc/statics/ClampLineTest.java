package clampwise.calc.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ClampLineTest {

  private static final double DEPTH_M = 1.134;

  /** 1,436 Pa on a module of 1,134 mm: half of it on each edge [computed]. */
  private static final double LOAD_N_PER_M = ModuleEdge.loadNPerM(1436, DEPTH_M);

  private static final ModuleEdge EDGE = new ModuleEdge(0, 1.722, LOAD_N_PER_M);

  @Test
  void halfOfTheModulesLoadGoesToEachEdge() {
    assertThat(2 * LOAD_N_PER_M * 1.722).isCloseTo(1436 * DEPTH_M * 1.722, within(1e-9));
  }

  /** Two clamps with overhangs in closed form: R2 = w L (L/2 - a)/(b - a). */
  @Test
  void twoClampsCarryByStatics() {
    LineForces forces = new ClampLine(new double[] {0.3, 1.4}).under(List.of(EDGE));
    double second = LOAD_N_PER_M * 1.722 * (0.861 - 0.3) / 1.1;
    assertThat(forces.reactionsN()[1]).isCloseTo(second, within(1e-9));
    assertThat(forces.reactionsN()[0]).isCloseTo(LOAD_N_PER_M * 1.722 - second, within(1e-9));
    assertThat(forces.held()).containsExactly(EDGE);
    assertThat(forces.notHeld()).isEmpty();
  }

  @Test
  void aClampNearTheMiddleTakesMoreThanItsTributaryWidthTells() {
    LineForces forces = new ClampLine(new double[] {0.1, 0.9}).under(List.of(EDGE));
    assertThat(forces.reactionsN()[1]).isGreaterThan(forces.tributaryN()[1]);
    assertThat(forces.tributaryN()[0]).isCloseTo(0.5 * LOAD_N_PER_M, within(1e-9));
    assertThat(forces.tributaryN()[1]).isCloseTo(1.222 * LOAD_N_PER_M, within(1e-9));
  }

  @Test
  void anInnerLineAddsTheModuleBelowAndTheOneAbove() {
    ClampLine line = new ClampLine(new double[] {0.3, 1.4});
    double[] once = line.under(List.of(EDGE)).reactionsN();
    double[] both = line.under(List.of(EDGE, EDGE)).reactionsN();
    assertThat(both[0]).isCloseTo(2 * once[0], within(1e-9));
    assertThat(both[1]).isCloseTo(2 * once[1], within(1e-9));
  }

  @Test
  void eachEdgeIsABeamOfItsOwn() {
    ClampLine line = new ClampLine(new double[] {0.3, 1.4, 2.1, 3.2});
    ModuleEdge next = new ModuleEdge(1.734, 3.456, 3 * LOAD_N_PER_M);
    double[] forces = line.under(List.of(EDGE, next)).reactionsN();
    assertThat(forces[0] + forces[1]).isCloseTo(EDGE.loadNPerM() * 1.722, within(1e-9));
    assertThat(forces[2] + forces[3]).isCloseTo(next.loadNPerM() * 1.722, within(1e-9));
  }

  @Test
  void clampsExactlyAtTheCornersHoldTheEdge() {
    LineForces forces = new ClampLine(new double[] {0, 1.722}).under(List.of(EDGE));
    assertThat(forces.held()).hasSize(1);
    assertThat(forces.reactionsN()[0]).isCloseTo(forces.reactionsN()[1], within(1e-9));
  }

  @Test
  void anEdgeOnOneClampIsNotHeldAndLoadsNothing() {
    LineForces forces = new ClampLine(new double[] {0.8, 1.9}).under(List.of(EDGE));
    assertThat(forces.notHeld()).containsExactly(EDGE);
    assertThat(forces.held()).isEmpty();
    assertThat(forces.reactionsN()).containsOnly(0);
    assertThat(forces.tributaryN()).containsOnly(0);
  }

  @Test
  void threeClampsCarryAsAContinuousBeam() {
    LineForces forces =
        new ClampLine(new double[] {0, 1, 2}).under(List.of(new ModuleEdge(0, 2, 8)));
    assertThat(forces.reactionsN()).containsExactly(new double[] {3, 10, 3}, within(1e-12));
    assertThat(forces.tributaryN()).containsExactly(new double[] {4, 8, 4}, within(1e-12));
  }

  @Test
  void tributaryWidthsAddUpToTheEdge() {
    double[] widths = Tributary.widthsM(0.2, 5, 0.5, 1.5, 4.5);
    assertThat(widths).containsExactly(new double[] {0.8, 2, 2}, within(1e-12));
  }
}
