package clampwise.facts.layout;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.job.Count;
import clampwise.job.Named;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Schedules whose step depends on the wind zone, and the words for zones. */
class ZoneScheduleTest {

  private static final WindZones EDGE_LEFT_OF_FOUR_METRES =
      WindZones.of(
          List.of(
              new ZoneArea("2n", 2, PlaneAxes.rectangle(0, 0, 4, 10), "figure"),
              new ZoneArea("1", 1, PlaneAxes.rectangle(4, 0, 20, 10), "figure")));

  private final Jobs job = new Jobs();

  @Test
  void theStepBetweenSeamsFollowsTheZoneOfEachSeam() {
    assertThat(seams(Map.of("edge", 1, "field", 3)))
        .containsExactly(3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 15, 18);
    assertThat(job.found()).isEmpty();
  }

  @Test
  void aZoneTheScheduleLeavesOutMakesTheAttachmentsUnknown() {
    assertThat(read(Map.of("field", 3)).unknown())
        .contains("the attachment schedule of field A leaves out zone 2n");
    assertThat(job.found()).containsExactly("a schedule by zone without zone 2n");
  }

  @Test
  void aStepOfZeroIsReported() {
    assertThat(read(Map.of("edge", 0, "field", 3)).planned()).isEmpty();
    assertThat(job.found()).containsExactly("every 0th seam");
  }

  @Test
  void theExactZoneGoesBeforeItsDigitAndTheDigitBeforeTheWord() {
    Named<String> given = Jobs.named(Map.of("2e", "exact", "2", "digit", "edge", "word"));

    assertThat(ZoneKeys.find(given, "2e")).contains("exact");
    assertThat(ZoneKeys.find(given, "2r")).contains("digit");
    assertThat(ZoneKeys.find(Jobs.named(Map.of("edge", "word")), "2r")).contains("word");
    assertThat(ZoneKeys.find(given, "1'")).isEmpty();
  }

  private List<Integer> seams(Map<String, Integer> steps) {
    return read(steps).planned().stream()
        .filter(planned -> planned.line() == 1)
        .map(planned -> (int) Math.round(planned.alongM() / 0.4) + 1)
        .toList();
  }

  private Scheduled read(Map<String, Integer> steps) {
    job.block = Optional.of(Jobs.block(600, 1000, 1, 4));
    PlaneLayout plane = job.plane();
    LineMap lines = LineMap.of(plane.fields().get(0).modules(), 0.012);
    Ground ground =
        new Ground(
            SeamMap.of(plane.seams(), Optional.empty()),
            plane.reading().seamsUnknown(),
            () -> EDGE_LEFT_OF_FOUR_METRES);
    return new PatternSchedule(Jobs.text("A"), lines, ground, job.problems)
        .read(Jobs.byZone(steps));
  }

  @Test
  void aCountOfClampsAboveTwoIsSpreadBetweenTheOuterTwo() {
    job.block = Optional.of(Jobs.block(600, 1000, 1, 1));
    job.attach = Optional.of(Jobs.perEdge(4));

    assertThat(job.field().attachments())
        .filteredOn(attachment -> attachment.line() == 1)
        .extracting(attachment -> attachment.seam().orElseThrow().number())
        .containsExactly(3, 4, 5, 6);
  }

  @Test
  void ofTwoRowsTheOneWithTheHigherRatingThatHasSeamsInBothHalvesIsUsed() {
    job.module =
        Jobs.module(
            1722,
            1134,
            Jobs.zone(0, 150, 3600),
            Jobs.zone(150, 330, 2400),
            Jobs.zone(0, 430, 1600));
    job.block = Optional.of(Jobs.block(600, 1000, 1, 1));
    job.attach = Optional.of(Jobs.perEdge(2));

    assertThat(job.field().attachments())
        .isNotEmpty()
        .allMatch(
            attachment ->
                attachment.grips().get(0).row().orElseThrow().up().orElseThrow().pa() == 2400);
  }

  @Test
  void twoWaysToScheduleAtOnceAreReported() {
    Count two = Jobs.count(2);
    job.block = Optional.of(Jobs.block(600, 1000, 1, 1));
    job.attach =
        Optional.of(
            new clampwise.job.Attach(
                Optional.of(two),
                Optional.of(two),
                Named.none(),
                Optional.empty(),
                Named.none(),
                List.of(),
                Optional.empty()));
    job.field();

    assertThat(job.found()).containsExactly("a second way to schedule the attachments of field A");
  }
}
