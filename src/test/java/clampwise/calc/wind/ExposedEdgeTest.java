package clampwise.calc.wind;

import static clampwise.calc.wind.Cases.CODE_16;
import static clampwise.calc.wind.Cases.CODE_22;
import static clampwise.calc.wind.Cases.FOOT_M;
import static clampwise.calc.wind.Cases.INCH_M;
import static clampwise.calc.wind.Cases.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.ExposedEdge.EdgeFactor;
import clampwise.calc.wind.WindChoices.ExposedReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Array edge factor, handbook part 2 with its conflict 1: readings of 7-16 from memory, of 7-22
 * second-hand.
 */
class ExposedEdgeTest {

  private static final double FAR = Double.POSITIVE_INFINITY;

  /** h 20 ft, h2 6 in, panel 5 ft: 0.5 h = 10 ft, X = max(2 ft, 4 ft), strip 7.5 ft. */
  @ParameterizedTest
  @CsvSource({
    "10, Infinity, 0, false, 1.0",
    "10.1, Infinity, 0, true, 1.5",
    "30, 4, 0, false, 1.0",
    "30, 4.1, 0, true, 1.5",
    "30, Infinity, 7.4, true, 1.5",
    "30, Infinity, 7.5, true, 1.0"
  })
  void theEarlierEditionAsksForFourHeightsAndFourFeet(
      double roofFt, double nextFt, double insideFt, boolean exposed, double factor) {
    check(CODE_16, side(roofFt, nextFt, insideFt), exposed, factor);
  }

  /** 4 h2 governs above h2 = 1 ft; such panels are outside the method's height. */
  @Test
  void fourHeightsGovernForHighPanels() {
    ArraySize high = new ArraySize(2 * FOOT_M, 5 * FOOT_M, 20 * FOOT_M);
    assertThat(ExposedEdge.of(CODE_16, side(30, 8, 0), high, work()).exposed()).isFalse();
    assertThat(ExposedEdge.of(CODE_16, side(30, 8.1, 0), high, work()).exposed()).isTrue();
  }

  /** By default either reading exposes (2 h2 = 1 ft), and the strip is the wider (7.5 ft). */
  @ParameterizedTest
  @CsvSource({
    "10, Infinity, 0, false, 1.0",
    "30, 1.0, 0, false, 1.0",
    "30, 1.1, 0, true, 1.5",
    "30, 1.1, 7.4, true, 1.5",
    "30, 1.1, 7.6, true, 1.0"
  })
  void theLaterEditionTakesTheSevereSideOfBothReadings(
      double roofFt, double nextFt, double insideFt, boolean exposed, double factor) {
    check(CODE_22, side(roofFt, nextFt, insideFt), exposed, factor);
  }

  /** 2 h2 and a strip of 2 h2 = 1 ft. */
  @ParameterizedTest
  @CsvSource({
    "1.1, 0, true, 1.5",
    "1.0, 0, false, 1.0",
    "1.1, 0.9, true, 1.5",
    "1.1, 1.0, true, 1"
  })
  void aReadingCanBeChosen(double nextFt, double insideFt, boolean exposed, double factor) {
    WindChoices two = Cases.choices().with(ExposedReading.TWO_HEIGHTS);
    check(CODE_22.with(two), side(30, nextFt, insideFt), exposed, factor);
  }

  @Test
  void theNextPanelCountsLikeTheNextArray() {
    PanelSide near = new PanelSide(30 * FOOT_M, 1 * FOOT_M, 5 * FOOT_M, 0);
    assertThat(factor(CODE_16, near).exposed()).isTrue();
    PanelSide close = new PanelSide(30 * FOOT_M, 1 * FOOT_M, 1 * FOOT_M, 0);
    assertThat(factor(CODE_16, close).exposed()).isFalse();
  }

  @Test
  void theOpenReadingIsToldInTheTrail() {
    Work work = work();
    ExposedEdge.of(CODE_22, side(30, FAR, 0), size(), work);
    assertThat(work.lines())
        .extracting(Line::note)
        .anyMatch(note -> note.contains("the severe side is taken"));
  }

  @Test
  void theSevereReadingIsNeverMilderThanAnother() {
    for (double next = 0.5; next < 6; next += 0.25) {
      for (double inside = 0; inside < 10; inside += 0.5) {
        PanelSide side = side(30, next, inside);
        double severe = factor(CODE_22, side).factor();
        assertThat(severe).isGreaterThanOrEqualTo(factor(CODE_16, side).factor());
      }
    }
  }

  private static void check(WindCode code, PanelSide side, boolean exposed, double factor) {
    EdgeFactor found = factor(code, side);
    assertThat(found.exposed()).isEqualTo(exposed);
    assertThat(found.factor()).isCloseTo(factor, within(1e-12));
  }

  private static EdgeFactor factor(WindCode code, PanelSide side) {
    return ExposedEdge.of(code, side, size(), work());
  }

  private static PanelSide side(double roofFt, double nextFt, double insideFt) {
    return new PanelSide(roofFt * FOOT_M, nextFt * FOOT_M, nextFt * FOOT_M, insideFt * FOOT_M);
  }

  private static ArraySize size() {
    return new ArraySize(6 * INCH_M, 5 * FOOT_M, 20 * FOOT_M);
  }
}
