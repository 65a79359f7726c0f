package clampwise.facts.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import org.junit.jupiter.api.Test;

/** The array above the roof, and what the drawings state of it. */
class ArrayAndClaimsTest {

  private static final double CLOSE = 1e-9;

  /** a = 10 % of the least horizontal size: 0.1 of 60 ft; ASCE 7-16, figure 30.3-2, note [2nd]. */
  @Test
  void noFieldIsLoweredBelowItsFrames() {
    BaseJob job = BaseJob.with("seam-roof", "fields: {A: {block: {at: [20 ft, 40 mm]}}}");

    assertThat(job.facts(ArrayEdge.class))
        .filteredOn(fact -> fact.edge().equals("eave"))
        .extracting(ArrayEdge::distanceM, ArrayEdge::lower)
        .containsExactly(tuple(0.04, ""));
  }

  @Test
  void theZoneWidthOfARoofSixtyFeetWideIsSixFeet() {
    assertThat(RoofJobs.seams("zone-width: 6 ft", "zone-width: 3 ft").facts(ZoneWidthClaim.class))
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.computedM()).isCloseTo(1.8288, within(CLOSE));
              assertThat(fact.claimedM()).isCloseTo(0.9144, within(CLOSE));
            });
  }

  @Test
  void aZoneWidthThatCannotBeComputedIsNotChecked() {
    assertThat(RoofJobs.seams("  roof: gable\n", "").missing(ZoneWidthClaim.class))
        .containsExactly("the roof shape of the building is not given (building: roof)");
  }

  /** Four columns with two clamps on each of four lines; the outer two lines have end clamps. */
  @Test
  void countsAreThoseOfTheDrawing() {
    assertThat(RoofJobs.seams().facts(CountClaim.class))
        .extracting(CountClaim::what, CountClaim::counted, CountClaim::difference)
        .containsExactly(
            tuple("modules", 12, 0),
            tuple("attachments", 32, 0),
            tuple("mid clamps", 16, 0),
            tuple("end clamps", 16, 0));
  }

  @Test
  void attachmentsThatAreNotDrawnAreNotCounted() {
    BaseJob job = RoofJobs.seams("    attach: {per-edge: 2}\n", "");

    assertThat(job.facts(CountClaim.class)).extracting(CountClaim::what).containsExactly("modules");
    assertThat(job.missing(CountClaim.class))
        .containsExactly("field A has no attachment schedule (attach)");
  }

  @Test
  void theTopIsAsWrittenElseStandoffPlusFrame() {
    assertThat(RoofJobs.seams().facts(ArrayHeight.class))
        .extracting(ArrayHeight::from)
        .containsExactly("as written");
    assertThat(RoofJobs.seams("    top-height: 115 mm\n", "").facts(ArrayHeight.class))
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.from()).isEqualTo("standoff plus frame");
              assertThat(fact.heightM()).isCloseTo(0.115, within(CLOSE));
            });
  }

  @Test
  void aTopThatNothingGivesIsNotChecked() {
    String top = "    top-height: 115 mm\n";
    assertThat(RoofJobs.seams(top, "", "      standoff: 85 mm\n", "").missing(ArrayHeight.class))
        .containsExactly(
            "neither the top height of field A nor its standoff is given (top-height)");
    assertThat(RoofJobs.seams(top, "", "    frame-height: 30 mm\n", "").missing(ArrayHeight.class))
        .containsExactly("the frame height of M30 is not given (frame-height)");
    assertThat(RoofJobs.seams("  codes: {loads: asce-7-16}\n", "").missing(ArrayHeight.class))
        .containsExactly("the edition of the load standard is not given (site: codes: loads)");
  }

  @Test
  void oneKindOfAttachmentStandsParallelToTheRoof() {
    assertThat(RoofJobs.seams("tilt: 0 deg", "tilt: 3 deg").facts(ArrayTilt.class))
        .singleElement()
        .satisfies(fact -> assertThat(fact.tiltRad()).isCloseTo(Math.toRadians(3), within(CLOSE)));
    assertThat(RoofJobs.seams("    tilt: 0 deg\n", "").facts(ArrayTilt.class))
        .singleElement()
        .satisfies(fact -> assertThat(fact.tiltRad()).isZero());
    assertThat(
            RoofJobs.seams("    tilt: 0 deg\n", "", "    attach: {per-edge: 2}\n", "")
                .missing(ArrayTilt.class))
        .containsExactly("the tilt of field A against the roof is not given (tilt)");
  }

  /** Twice 115 mm; the eave lies 2438.4 mm below and the left rake 6096 mm beside the field. */
  @Test
  void distancesToTheEdgesAreMeasuredOnTheSlope() {
    assertThat(RoofJobs.seams().facts(ArrayEdge.class))
        .hasSize(4)
        .allSatisfy(fact -> assertThat(fact.leastM()).isCloseTo(0.230, within(CLOSE)))
        .allSatisfy(fact -> assertThat(fact.moveM()).isZero());
    assertThat(RoofJobs.seams().facts(ArrayEdge.class))
        .allSatisfy(fact -> assertThat(fact.lower()).startsWith(", or lower it"));
    assertThat(RoofJobs.seams().facts(ArrayEdge.class))
        .filteredOn(fact -> fact.edge().equals("eave"))
        .extracting(ArrayEdge::distanceM)
        .containsExactly(2.4384);
    assertThat(RoofJobs.seams().facts(ArrayEdge.class))
        .filteredOn(fact -> fact.edge().equals("rake"))
        .extracting(ArrayEdge::distanceM)
        .contains(6.096);
  }
}
