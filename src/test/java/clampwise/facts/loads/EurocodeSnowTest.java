package clampwise.facts.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Snow on whole jobs under EN 1991-1-3: cases A-E5 [library] and A-E6 [read]. */
class EurocodeSnowTest {

  /** Case A-E5 [library]: μ1 is .8, .8, .4 and 0; .8 where sliding is prevented. */
  @ParameterizedTest
  @CsvSource({"10, yes, 0.8", "30, yes, 0.8", "45, yes, 0.4", "60, yes, 0", "60, no, 0.8"})
  void aE5SnowFallsWithTheSlopeWhereItSlidesOff(double degrees, String slides, double shape) {
    EurocodeJobs job =
        EurocodeJobs.gable(
            20,
            5,
            20,
            degrees,
            "0.65 kPa",
            "1 kPa",
            "building:",
            "loads: {snow: {slides-off: " + slides + "}}\nbuilding:");
    assertThat(job.snow().result().orElseThrow().planPa(job.module()))
        .isCloseTo(1000 * shape, within(1e-6));
  }

  /** Case A-E6 [read]: sk .65, Ce = Ct = 1, duopitch 8.5 degrees: .52 kN/m², drifted .26. */
  @Test
  void aE6SnowOfTheGuidesBuilding() {
    EurocodeJobs job = EurocodeJobs.gable(60, 16, 8, 8.5);
    Work work = new Work(Measure.METRIC);
    assertThat(job.snow().result().orElseThrow().show(job.module(), work).si())
        .isCloseTo(520, within(1e-6));
    assertThat(work.lines())
        .filteredOn(line -> line.result().symbol().equals("s_d"))
        .extracting(line -> line.result().si())
        .allSatisfy(drifted -> assertThat(drifted).isCloseTo(260, within(1e-6)))
        .isNotEmpty();
  }

  /** μw = (10 + 10) / (2 x 4) = 2.5 over 8 m; 5.5 m away .8 + 1.7 x 2.5 / 8 [from memory]. */
  @Test
  void aHigherRoofBesideThePlaneBringsADrift() {
    assertThat(besideA("wall")).isCloseTo(1000 * (0.8 + 1.7 * 2.5 / 8), within(1e-6));
  }

  /** The same roof above an edge drawn as a step. */
  @Test
  void anEdgeOfKindStepBringsTheSameDriftAsAWall() {
    assertThat(besideA("step")).isCloseTo(besideA("wall"), within(1e-9));
  }

  private static double besideA(String edge) {
    EurocodeJobs job =
        EurocodeJobs.flat(
            "0.65 kPa",
            "1 kPa",
            "    seams: {first: 200}",
            "    edges: {top: " + edge + "}\n    seams: {first: 200}",
            "building:",
            "loads: {snow: {higher-roof: {beside: south, rise: 4 m, length: 10 m}}}\nbuilding:");
    return job.snow().result().orElseThrow().planPa(job.module());
  }

  @Test
  void aHigherRoofWithoutAWallLeavesTheSnowUnknown() {
    EurocodeJobs job =
        EurocodeJobs.flat(
            "building:",
            "loads: {snow: {higher-roof: {beside: south, rise: 4 m, length: 10 m}}}\nbuilding:");
    assertThat(job.snow()).isInstanceOf(NotApplicable.class);
  }
}
