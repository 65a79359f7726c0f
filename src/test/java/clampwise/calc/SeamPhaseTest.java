package clampwise.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked example 3.4, seam phase [computed]: twelve modules, 12 mm gaps. */
class SeamPhaseTest {

  private static final double GAP_M = 0.012;
  private static final int MODULES = 12;

  @ParameterizedTest
  @CsvSource({
    "1722, 304.8, 210.0",
    "1722, 406.4, 108.4",
    "1722, 457.2, 362.4",
    "1722, 609.6, 514.8",
    "2278, 457.2, 4.0"
  })
  void seamsDriftThroughTheModulesAsInWorkedExample34(double edge, double pitch, double drift) {
    assertThat(SeamPhase.driftM(edge / 1e3, GAP_M, pitch / 1e3) * 1e3)
        .isCloseTo(drift, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource(
      nullValues = "none",
      value = {
        "304.8, 234, 326, 7 10",
        "406.4, 234, 326, 10",
        "457.2, 234, 326, none",
        "609.6, 234, 326, 10",
        "304.8, 150, 500, 1 2 3 4 5 6 7 8 9 10 11 12",
        "406.4, 150, 500, 2 3 4 6 7 8 9 10 12",
        "457.2, 150, 500, 1 3 5 6 10 11",
        "609.6, 150, 500, 3 4 10 11",
        "304.8, 0, 430, 1 2 3 4 5 6 7 8 9 10 11 12",
        "406.4, 0, 430, 1 2 3 4 5 6 7 8 9 10 11 12",
        "457.2, 0, 430, 1 2 3 4 5 6 7 8 9 10 11 12",
        "609.6, 0, 430, 2 3 4 5 9 10 11"
      })
  void modulesThatComplyAreThoseOfWorkedExample34(
      double pitch, double from, double to, String modules) {
    List<Integer> expected =
        modules == null
            ? List.of()
            : Arrays.stream(modules.split(" ")).map(Integer::valueOf).toList();
    assertThat(row(1722, pitch, from, to).complying(0)).isEqualTo(expected);
  }

  /** The example swept the start in steps of 1 mm. */
  @ParameterizedTest
  @CsvSource({
    "1722, 304.8, 234, 326, 2, 0",
    "1722, 406.4, 234, 326, 2, 0",
    "1722, 457.2, 234, 326, 0, 0",
    "1722, 609.6, 234, 326, 1, 0",
    "2278, 457.2, 234, 326, 0, 0",
    "1722, 304.8, 150, 500, 12, 12",
    "1722, 406.4, 150, 500, 10, 7",
    "1722, 457.2, 150, 500, 8, 4",
    "1722, 609.6, 150, 500, 5, 3",
    "2278, 457.2, 150, 500, 12, 0",
    "1722, 304.8, 0, 430, 12, 12",
    "1722, 406.4, 0, 430, 12, 12",
    "1722, 457.2, 0, 430, 12, 8",
    "1722, 609.6, 0, 430, 8, 6",
    "2278, 457.2, 0, 430, 12, 0",
    "1722, 304.8, 200, 660, 12, 12",
    "1722, 406.4, 200, 660, 12, 12",
    "1722, 457.2, 200, 660, 12, 12",
    "1722, 609.6, 200, 660, 7, 5",
    "2278, 457.2, 200, 660, 12, 12"
  })
  void bestAndWorstCountsAreThoseOfWorkedExample34(
      double edge, double pitch, double from, double to, int best, int worst) {
    PhaseSweep sweep = row(edge, pitch, from, to).sweep(onePitch(pitch));
    int[] counts = IntStream.range(0, (int) pitch).map(mm -> sweep.countAt(mm / 1e3)).toArray();
    assertThat(Arrays.stream(counts).max()).hasValue(best);
    assertThat(Arrays.stream(counts).min()).hasValue(worst);
  }

  @ParameterizedTest
  @CsvSource({
    "1722, 304.8, 234, 326",
    "1722, 406.4, 150, 500",
    "1722, 457.2, 150, 500",
    "1722, 457.2, 0, 430",
    "1722, 609.6, 200, 660",
    "2278, 457.2, 150, 500"
  })
  void noStartOnATenthOfAMillimetreBeatsTheBestOne(
      double edge, double pitch, double from, double to) {
    SeamPhase row = row(edge, pitch, from, to);
    PhaseSweep sweep = row.sweep(onePitch(pitch));
    int best = 0;
    int worst = MODULES;
    for (int tenths = 0; tenths < pitch * 10; tenths++) {
      int count = row.complying(tenths / 1e4).size();
      assertThat(sweep.countAt(tenths / 1e4)).as("start %s", tenths).isEqualTo(count);
      best = Math.max(best, count);
      worst = Math.min(worst, count);
    }
    assertThat(sweep.best()).isEqualTo(best);
    assertThat(sweep.worst()).isEqualTo(worst);
  }

  @ParameterizedTest
  @CsvSource({"1722, 457.2, 150, 500", "2278, 457.2, 0, 430", "1722, 609.6, 0, 430"})
  void theBestStartsAreExactlyThoseTheExhaustiveSweepFinds(
      double edge, double pitch, double from, double to) {
    SeamPhase row = row(edge, pitch, from, to);
    PhaseSweep sweep = row.sweep(onePitch(pitch));
    Intervals best = sweep.bestStarts();
    for (int tenths = 0; tenths < pitch * 10; tenths++) {
      double startM = tenths / 1e4;
      assertThat(best.contains(startM)).isEqualTo(row.complying(startM).size() == sweep.best());
    }
  }

  @Test
  void aZoneAsWideAsThePitchSuitsEveryStart() {
    PhaseSweep sweep = row(1722, 430, 0, 430).sweep(onePitch(430));
    assertThat(sweep.worst()).isEqualTo(MODULES);
  }

  @Test
  void shiftingTheRowByOnePitchChangesNothing() {
    SeamPhase row = row(1722, 457.2, 150, 500);
    for (double startM = 0; startM < 0.457; startM += 0.013) {
      assertThat(row.complying(startM + 0.4572)).isEqualTo(row.complying(startM));
    }
  }

  @Test
  void surveyedSeamsOnThePitchGiveTheSameModulesAsNominalOnes() {
    List<Double> placesM = IntStream.rangeClosed(-3, 60).mapToObj(n -> n * 0.4572).toList();
    ClampedEdge edge = new ClampedEdge(1.722, new Interval(0.150, 0.500));
    SeamPhase surveyed = SeamPhase.uniform(SeamPositions.surveyed(placesM), edge, GAP_M, MODULES);
    assertThat(surveyed.complying(0)).containsExactly(1, 3, 5, 6, 10, 11);
    assertThat(surveyed.sweep(onePitch(457.2)).bestStarts())
        .isEqualTo(row(1722, 457.2, 150, 500).sweep(onePitch(457.2)).bestStarts());
  }

  @Test
  void startsOfOneModuleOverSurveyedSeamsAreExactlyThoseThatComply() {
    Random random = new Random(11);
    List<Double> grownM =
        IntStream.range(0, 60).mapToObj(n -> n * 0.4602 + random.nextDouble() * 0.006).toList();
    ClampedEdge edge = new ClampedEdge(1.722, new Interval(0.150, 0.500));
    SeamPhase row = SeamPhase.uniform(SeamPositions.surveyed(grownM), edge, GAP_M, MODULES);
    Intervals fifth = row.startsFor(5, new Interval(0, 0.9));
    for (int tenths = 0; tenths <= 9000; tenths += 3) {
      double startM = tenths / 1e4;
      assertThat(fifth.contains(startM)).isEqualTo(row.complying(startM).contains(5));
    }
  }

  @Test
  void pastTheLastSurveyedSeamNoModuleComplies() {
    ClampedEdge edge = new ClampedEdge(1.722, new Interval(0, 0.430));
    SeamPhase row =
        SeamPhase.uniform(SeamPositions.surveyed(List.of(0.0, 0.4, 1.4)), edge, GAP_M, 2);
    assertThat(row.complying(0)).containsExactly(1);
  }

  private static SeamPhase row(double edge, double pitch, double from, double to) {
    ClampedEdge clamped = new ClampedEdge(edge / 1e3, new Interval(from / 1e3, to / 1e3));
    return SeamPhase.uniform(SeamPositions.nominal(0, pitch / 1e3), clamped, GAP_M, MODULES);
  }

  private static Interval onePitch(double pitch) {
    return new Interval(0, pitch / 1e3);
  }
}
