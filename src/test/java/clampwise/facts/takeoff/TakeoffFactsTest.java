package clampwise.facts.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.facts.BaseJob;
import org.junit.jupiter.api.Test;

/** Parts lists and crew time, against numbers worked out by hand. */
class TakeoffFactsTest {

  /** 4 h, and 32 x 120 + 12 x 90 + 32 x 45 + 3 x 90 + 1 x 180 + 12 x 120 s [computed]. */
  @Test
  void aTimeInAllIsHeldAgainstHalfOfAllPhases() {
    CrewTotal total = with("crew-time: {total: 1 h}").only(CrewTotal.class);

    assertThat(total.placementS()).isEqualTo(1080);
    assertThat(total.allS()).isEqualTo(22_650);
    assertThat(total.leastS()).isEqualTo(11_325);
  }

  @Test
  void whatIsNotDrawnAtAllIsLeftOutRatherThanOrderedNoTimes() {
    BaseJob job =
        BaseJob.with(
            "seam-roof",
            """
            parts: {end-clamps: {EC-2: {frame-height: 33 mm to 37 mm}}}
            takeoff: {parts-list: {EC-1: 20, EC-2: 17}}
            """);

    assertThat(job.facts(OrderedPart.class))
        .filteredOn(part -> part.part().startsWith("end clamp"))
        .extracting(OrderedPart::instead)
        .containsExactly(
            "order 17, or draw what the rest is for", "leave it out, or draw what it is for");
  }

  private static BaseJob with(String takeoff) {
    return BaseJob.with("seam-roof", "takeoff: {" + takeoff + "}");
  }
}
