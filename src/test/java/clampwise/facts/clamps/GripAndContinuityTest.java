package clampwise.facts.clamps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import org.junit.jupiter.api.Test;

/** The grip of clamps, the body below end clamps, and edges that run over several clamps. */
class GripAndContinuityTest {

  @Test
  void aWiderRowGapCostsEachFrameHalfOfIt() {
    assertThat(seams("fields: {A: {row-gap: 16 mm}}").facts(ClampGrip.class))
        .extracting(ClampGrip::clamp, ClampGrip::gripM)
        .containsExactlyInAnyOrder(tuple("mid clamp MC-1", 0.008), tuple("end clamp EC-1", 0.010));
  }

  @Test
  void aGapThatTheClampDoesNotSpanIsLeftToTheRuleOnGaps() {
    BaseJob job = seams("fields: {A: {row-gap: 3 in}}");

    assertThat(job.facts(ClampGrip.class))
        .extracting(ClampGrip::clamp)
        .containsExactly("end clamp EC-1");
    assertThat(job.missing(ClampGrip.class))
        .containsExactly("mid clamp MC-1 does not reach from row to row in the gap of field A");
  }

  @Test
  void aClampOfUnknownReachIsNotJudged() {
    BaseJob job = seams("parts: {end-clamps: {EC-1: {grip-depth: ~}}}");

    assertThat(job.missing(ClampGrip.class))
        .containsExactly("how far end clamp EC-1 reaches over a frame is not given (grip-depth)");
    assertThat(job.missing(GlassReach.class))
        .containsExactly("how far end clamp EC-1 reaches over a frame is not given (grip-depth)");
    assertThat(seams("modules: {M30: {frame-lip: ~}}").missing(GlassReach.class))
        .containsExactly("the width of the frame's lip of module M30 is not given (frame-lip)");
  }

  @Test
  void aBodyCentredOnTheEdgeHasHalfOfItsLengthPastIt() {
    assertThat(seams("{}").only(EndBearing.class).pastM()).isCloseTo(0.040, within(1e-7));
    assertThat(seams("parts: {seam-clamps: {SC-1: {body-length: ~}}}").missing(EndBearing.class))
        .containsExactly("the length of SC-1 along the slope is not given (body-length)");
  }

  /** A point 10 mm above the lower edge of a module leaves 10 mm less of the body past it. */
  @Test
  void anAttachmentSetInwardLeavesLess() {
    BaseJob job =
        seams("fields: {A: {attach: {per-edge: ~, points: [{at: [6299.2 mm, 2448.4 mm]}]}}}");

    assertThat(job.only(EndBearing.class).pastM()).isCloseTo(0.030, within(1e-7));
  }

  @Test
  void anEdgeOnTwoClampsHasNoContinuity() {
    assertThat(seams("{}").only(ContinuityClaim.class).computed()).isEqualTo(1);
  }

  /**
   * Reactions of two equal spans .375 1.250 .375 wL (handbook 3.6 [read]) over widths .5, 1, .5 L.
   */
  @Test
  void overTwoEqualSpansTheMiddleClampHasAQuarterMore() {
    ContinuityClaim fact =
        seams(
                """
                modules: {M30: {length: 1625.6 mm}}
                fields:
                  A:
                    block: {at: [5892.8 mm, 8 ft], rows: 1, columns: 1}
                    attach: {per-edge: ~, lines: {all: [15, 17, 19]}}
                """)
            .only(ContinuityClaim.class);

    assertThat(fact.computed()).isEqualTo(1.25);
  }

  private static BaseJob seams(String over) {
    return BaseJob.with("seam-roof", over);
  }
}
