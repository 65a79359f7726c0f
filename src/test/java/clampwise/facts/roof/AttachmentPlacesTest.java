package clampwise.facts.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import org.junit.jupiter.api.Test;

/**
 * Where attachments sit on the roof, worked out by hand: the field starts 2438.4 mm up, its lines
 * follow at 3578.4 mm, 4724.4 mm and 5864.4 mm; seams lie every 406.4 mm from 203.2 mm.
 */
class AttachmentPlacesTest {

  private static final double CLOSE = 1e-9;
  private static final String AT = "at: [20 ft, 8 ft]";
  private static final String PER_EDGE = "attach: {per-edge: 2}";

  @Test
  void aLineNearTheEaveIsMeasuredToTheLowerEndOfItsPanels() {
    assertThat(RoofJobs.seams(AT, "at: [20 ft, 100 mm]").facts(EndDistance.class))
        .filteredOn(fact -> fact.moveM() > 0)
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.end()).isEqualTo("lower");
              assertThat(fact.distanceM()).isCloseTo(0.100, within(CLOSE));
              assertThat(fact.leastM()).isCloseTo(0.150, within(CLOSE));
              assertThat(fact.moveM()).isCloseTo(0.050, within(CLOSE));
              assertThat(fact.limitFrom()).isEmpty();
            });
  }

  @Test
  void practiceGivesTheDistanceWhereThePartStatesNone() {
    assertThat(RoofJobs.seams("      from-panel-end: 150 mm\n", "").facts(EndDistance.class))
        .isNotEmpty()
        .allSatisfy(fact -> assertThat(fact.leastM()).isCloseTo(0.150, within(CLOSE)))
        .allSatisfy(fact -> assertThat(fact.limitFrom()).isPresent());
  }

  @Test
  void aLineNearALapIsMeasuredToTheNearestLap() {
    String laps = "seams: {first: 8 in}\n    end-laps: [2.5 m, 9 m]";
    assertThat(RoofJobs.seams("seams: {first: 8 in}", laps).facts(LapDistance.class))
        .filteredOn(fact -> fact.moveM() > 0)
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.lapM()).isEqualTo(2.5);
              assertThat(fact.distanceM()).isCloseTo(0.0616, within(CLOSE));
              assertThat(fact.units().get("lapM").symbol()).isEqualTo("m");
            });
  }

  @Test
  void aSlopeLongerThanOneSheetWithoutLapsIsNotChecked() {
    assertThat(RoofJobs.seams("x 31 ft 7 1/2 in", "x 60 ft").missing(LapDistance.class))
        .containsExactly(
            "where the end laps of plane south lie is not given (end-laps), and it is longer than one panel");
    assertThat(RoofJobs.seams().missing(LapDistance.class)).isEmpty();
  }

  @Test
  void aLineOverAPurlinSitsOnTheClips() {
    // Purlins lie every 1524 mm from 152.4 mm: the fourth at 4724.4 mm.
    assertThat(RoofJobs.seams("over-clip: yes", "over-clip: no").facts(ClipDistance.class))
        .filteredOn(fact -> fact.moveM() > 0)
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.distanceM()).isCloseTo(0, within(CLOSE));
              assertThat(fact.moveM()).isCloseTo(0.050, within(CLOSE));
            });
    assertThat(RoofJobs.seams().facts(ClipDistance.class)).isEmpty();
  }

  @Test
  void whatIsNotSaidOfClipsIsNotChecked() {
    assertThat(RoofJobs.seams("      over-clip: yes\n", "").missing(ClipDistance.class))
        .containsExactly("whether SC-1 may sit over a clip is not given (over-clip)");
    String purlins = "    purlins: {first: 6 in, spacing: 5 ft}\n";
    assertThat(
            RoofJobs.seams("over-clip: yes", "over-clip: no", purlins, "")
                .missing(ClipDistance.class))
        .containsExactly("where the clip lines of plane south lie is not given (purlins)");
  }

  @Test
  void everyFourthSeamIsFourPitchesWide() {
    assertThat(RoofJobs.seams(PER_EDGE, "attach: {every: 4}").facts(LineSpacing.class))
        .isNotEmpty()
        .allSatisfy(fact -> assertThat(fact.spacingM()).isCloseTo(4 * 0.4064, within(CLOSE)));
  }

  @Test
  void spacingAlongASeamIsTheDistanceOfItsLines() {
    // The widest is the middle row: half the 12 mm gap on both sides of its 1134 mm.
    assertThat(RoofJobs.seams().facts(SeamSpacing.class))
        .isNotEmpty()
        .extracting(SeamSpacing::spacingM)
        .contains(1.146);
  }

  @Test
  void spacingNeedsAnAllowedOneAndAZone() {
    String allowed = "    allowed-spacing: {field: 64 in, edge: 48 in, corner: 32 in}\n";
    assertThat(RoofJobs.seams(allowed, "").missing(LineSpacing.class))
        .containsExactly("field A gives no allowed spacing along a line (allowed-spacing)");
    assertThat(
            RoofJobs.seams(PER_EDGE, "tilt: 0 deg", "    tilt: 0 deg\n", "")
                .missing(LineSpacing.class))
        .containsExactly("field A has no attachment schedule (attach)");
    assertThat(RoofJobs.seams("  codes: {loads: asce-7-16}\n", "").missing(LineSpacing.class))
        .containsExactly("the edition of the load standard is not given (site: codes: loads)");
  }

  @Test
  void aPointBesideItsSeamIsMeasuredToTheSeam() {
    // Seam 16 lies at 203.2 + 15 * 406.4 = 6299.2 mm.
    String point = "attach: {points: [{at: [6324.2 mm, 8 ft]}]}";
    assertThat(RoofJobs.seams(PER_EDGE, point).facts(SeamOffset.class))
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.seam()).isEqualTo(16);
              assertThat(fact.seamAlongM()).isCloseTo(6.2992, within(CLOSE));
              assertThat(fact.offsetM()).isCloseTo(0.025, within(CLOSE));
              assertThat(fact.mostM()).isCloseTo(0.003, within(CLOSE));
            });
  }

  @Test
  void aSurveyedSeamAllowsMore() {
    String point = "attach: {points: [{at: [6324.2 mm, 8 ft]}]}";
    String surveyed = "seams: {surveyed: [5900 mm, 6300 mm, 6700 mm]}";
    assertThat(
            RoofJobs.seams(PER_EDGE, point, "seams: {first: 8 in}", surveyed)
                .facts(SeamOffset.class))
        .singleElement()
        .satisfies(fact -> assertThat(fact.mostM()).isCloseTo(0.010, within(CLOSE)));
  }

  @Test
  void seamsThatAreNotGivenAreNotChecked() {
    BaseJob job = RoofJobs.seams("    seams: {first: 8 in}\n", "");
    String reason = "where the seams of plane south lie is not given (pitch)";

    assertThat(job.missing(SeamOffset.class)).containsExactly(reason);
    assertThat(job.facts(SeamOffset.class)).isEmpty();
  }
}
