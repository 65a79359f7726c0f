package clampwise.calc.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome;
import clampwise.calc.statics.BeamLoad.Even;
import clampwise.calc.statics.BeamLoad.Point;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BeamTest {

  private static BeamForces forces(Beam beam, double loadNPerM) {
    return beam.under(loadNPerM).result().orElseThrow();
  }

  private static BeamForces forces(Beam beam, BeamLoad... loads) {
    return beam.under(List.of(loads)).result().orElseThrow();
  }

  private static Beam equalSpans(int spans) {
    double[] supports = new double[spans + 1];
    Arrays.setAll(supports, i -> i);
    return new Beam(0, spans, supports);
  }

  /** Beam formulas of handbooks, single overhang: w 500 N/m, L 1.2 m, a 0.3 m [handbook]. */
  @Test
  void aSingleOverhangIsThatOfTheHandbook() {
    BeamForces forces = forces(new Beam(0, 1.5, new double[] {0, 1.2}), 500);
    assertThat(forces.reactionsN()[0]).isCloseTo(281.25, within(0.005));
    assertThat(forces.reactionsN()[1]).isCloseTo(468.75, within(0.005));
    assertThat(forces.supportMomentsNm()[1]).isCloseTo(-22.5, within(0.05));
    assertThat(forces.spanMomentsNm()[0]).isCloseTo(79.10, within(0.005));
  }

  /** Beam formulas of handbooks: a symmetric overhang gives each support half [handbook]. */
  @Test
  void aSymmetricOverhangGivesEachSupportHalf() {
    BeamForces forces = forces(new Beam(0, 1.8, new double[] {0.3, 1.5}), 500);
    assertThat(forces.reactionsN()).containsExactly(new double[] {450, 450}, within(1e-9));
  }

  /** Table of continuous beams with equal spans, reactions in w L [read]. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.500 0.500",
    "2, 0.375 1.250 0.375",
    "3, 0.400 1.100 1.100 0.400",
    "4, 0.393 1.143 0.929 1.143 0.393"
  })
  void equalSpansReactAsInTheTable(int spans, String printed) {
    double[] expected = Arrays.stream(printed.split(" ")).mapToDouble(Double::valueOf).toArray();
    assertThat(forces(equalSpans(spans), 1).reactionsN()).containsExactly(expected, within(5e-4));
  }

  /** The same table in exact fractions of w L. */
  @Test
  void fourEqualSpansReactInTwentyEighths() {
    double[] exact = {11.0 / 28, 32.0 / 28, 26.0 / 28, 32.0 / 28, 11.0 / 28};
    assertThat(forces(equalSpans(4), 1).reactionsN()).containsExactly(exact, within(1e-12));
  }

  /** Span moments of the same table in w L² [read]. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.125",
    "2, 0.0703 0.0703",
    "3, 0.080 0.025 0.080",
    "4, 0.0772 0.0364 0.0364 0.0772"
  })
  void equalSpansBendAsInTheTable(int spans, String printed) {
    double[] expected = Arrays.stream(printed.split(" ")).mapToDouble(Double::valueOf).toArray();
    assertThat(forces(equalSpans(spans), 1).spanMomentsNm())
        .containsExactly(expected, within(5e-5));
  }

  /** Propped spans under a force in the middle of one of two: 13, 22 and -3 of 32 [memory]. */
  @Test
  void aForceOnOneOfTwoSpansPriesTheFarSupport() {
    BeamForces forces = forces(equalSpans(2), new Point(0.5, 32));
    assertThat(forces.reactionsN()).containsExactly(new double[] {13, 22, -3}, within(1e-12));
    assertThat(forces.spanMomentsNm()[0]).isCloseTo(6.5, within(1e-12));
  }

  /** Both clamps on one half of an edge: the far one has to pull. */
  @Test
  void twoSupportsOnOneHalfPry() {
    BeamForces forces = forces(new Beam(0, 1, new double[] {0.1, 0.4}), 1);
    assertThat(forces.reactionsN()[0]).isCloseTo(-1.0 / 3, within(1e-12));
    assertThat(forces.reactionsN()[1]).isCloseTo(4.0 / 3, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 7, 12})
  void unequalSpansAgreeWithADenseSolutionOfTheThreeMomentEquations(int supports) {
    for (int seed = 0; seed < 50; seed++) {
      RandomBeam random = new RandomBeam(supports, seed);
      BeamForces banded = random.beam().under(random.loads()).result().orElseThrow();
      double[] dense = new ThreeMoments(random.beam(), random.loads()).supportMomentsNm();
      assertThat(banded.supportMomentsNm()).containsExactly(dense, within(1e-7));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 5, 11})
  void reactionsSumToTheLoadAndToItsMoment(int supports) {
    for (int seed = 0; seed < 50; seed++) {
      RandomBeam random = new RandomBeam(supports, seed);
      double[] reactionsN = random.beam().under(random.loads()).result().orElseThrow().reactionsN();
      double momentNm = 0;
      for (int i = 0; i < supports; i++) {
        momentNm += reactionsN[i] * random.beam().supportsM()[i];
      }
      assertThat(Arrays.stream(reactionsN).sum()).isCloseTo(random.totalN(), within(1e-8));
      assertThat(momentNm).isCloseTo(random.momentNm(), within(1e-8));
    }
  }

  @Test
  void aBeamSeenFromItsOtherEndReactsTheSame() {
    for (int seed = 0; seed < 50; seed++) {
      RandomBeam random = new RandomBeam(6, seed);
      BeamForces there = random.beam().under(random.loads()).result().orElseThrow();
      RandomBeam back = random.seenFromTheOtherEnd();
      BeamForces here = back.beam().under(back.loads()).result().orElseThrow();
      assertThat(RandomBeam.reversed(here.reactionsN()))
          .containsExactly(there.reactionsN(), within(1e-8));
      assertThat(RandomBeam.reversed(here.spanMomentsNm()))
          .containsExactly(there.spanMomentsNm(), within(1e-8));
    }
  }

  @Test
  void pieceByPieceIsTheSameAsWhole() {
    Beam beam = new Beam(-0.3, 4.1, new double[] {0, 1.1, 2.9, 4});
    BeamForces pieces =
        forces(beam, new Even(-0.3, 0.7, 90), new Even(0.7, 2.9, 90), new Even(2.9, 4.1, 90));
    assertThat(pieces.reactionsN()).containsExactly(forces(beam, 90).reactionsN(), within(1e-9));
    assertThat(pieces.spanMomentsNm())
        .containsExactly(forces(beam, 90).spanMomentsNm(), within(1e-9));
  }

  @Test
  void twiceTheLoadGivesTwiceTheReactions() {
    Beam beam = new Beam(-0.3, 4.1, new double[] {0, 1.1, 2.9, 4});
    double[] once = forces(beam, 70).reactionsN();
    double[] twice = forces(beam, 140).reactionsN();
    for (int i = 0; i < once.length; i++) {
      assertThat(twice[i]).isCloseTo(2 * once[i], within(1e-9));
    }
  }

  @Test
  void aLoadExactlyOverASupportGoesToThatSupportAlone() {
    BeamForces forces = forces(equalSpans(3), new Point(2, 40));
    assertThat(forces.reactionsN()).containsExactly(new double[] {0, 0, 40, 0}, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "0.5, tips",
    "0 0.2 0.2, not in order",
    "0 0.4 0.3, not in order",
    "-0.1 0.5, past the end of the beam",
    "0.5 1.1, past the end of the beam"
  })
  void whatIsNoBeamIsRefusedWithTheReason(String supports, String reason) {
    double[] places = Arrays.stream(supports.split(" ")).mapToDouble(Double::valueOf).toArray();
    assertThat(new Beam(0, 1, places).under(1))
        .isInstanceOfSatisfying(
            Outcome.NotApplicable.class, no -> assertThat(no.reason()).contains(reason));
  }

  @Test
  void aLoadOffTheBeamIsRefused() {
    assertThat(equalSpans(1).under(List.of(new Point(1.2, 5))).result()).isEmpty();
    assertThat(equalSpans(1).under(List.of(new Even(-0.1, 0.5, 5))).result()).isEmpty();
  }
}
