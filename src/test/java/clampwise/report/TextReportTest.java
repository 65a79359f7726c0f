package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import clampwise.finding.Place;
import clampwise.finding.Subject;
import clampwise.review.Review;
import clampwise.source.Position;
import clampwise.source.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextReportTest {

  private static String text(Review review, int width) {
    Sheet sheet = new Sheet(width, Paint.NONE);
    new TextReport(sheet).write(review);
    return sheet.toString();
  }

  @Test
  void aReviewReadsLikeAReviewersList() {
    assertThat(text(SampleReview.full(), 80))
        .isEqualTo(
            """
            Review of Hay barn, south slope
            barn/job.yaml

            Could not be read (1)

              barn/job.yaml:12:5
                  found   unknown key 'heigth'
                  wanted  a key of a panel
                  nearest height

            Errors (2)

              fields.A

              1.  Frame height outside the mid clamp's range
                  barn/job.yaml:34:16
                  mid clamp MC-35 grips 33 mm to 37 mm; the frame of PV-108-30 is 30 mm
                  why     A clamp outside its range bears on its edge or not at all, and its
                          rating is void.
                  remedy  use MC-30, which grips 28 mm to 32 mm
                  basis   UL 2703, mounting of modules (second-hand); holds for clamps
                          Common practice, no source; holds for all frames
                  rule    frame-outside-mid-clamp-range

              2.  Clamp outside the module's clamp zone
                  barn/job.yaml:40:12
                  the clamp on seam 7 sits 81 mm from the corner of A.R1C3; the rated zone
                  begins at 234 mm
                  why     Outside the zone the module has no rating.
                  remedy  begin the block at 9 ft 4 in: 12 of 12 modules comply
                  worst   fields.A / module R1C3 / lower edge: 81 mm against 234 mm
                          fields.A / module R1C4 / lower edge: 82 mm against 234 mm
                          fields.A / module R1C5 / lower edge: 83 mm against 234 mm
                  others  fields.A / module R1C6-R1C18 / lower edge
                  rule    clamp-outside-clamp-zone

            Notes (1)

              panels.barn roof

              3.  A roof fact is marked as assumed
                  barn/job.yaml:20:5
                  the pitch of barn roof is assumed
                  why     Seams drift from their nominal pitch.
                  remedy  measure it over ten seams
                  rule    roof-fact-assumed

            Accepted, not mended (2)
              These stand in the layout. Somebody answers for each; this program does not.

              -   Title of mid-clamp-shimmed (warning)
                  barn/job.yaml:40:12
                  message of mid-clamp-shimmed
                  accepted by roof engineer until 2027-03-31: the crew has shims of 2 mm for
                  this row
                  barn/job.yaml:2:5
                  rule    mid-clamp-shimmed

              -   Title of row-off-seams (warning)
                  barn/job.yaml:40:12
                  message of row-off-seams
                  known debt: recorded on 2026-02-03
                  barn/job.yaml:40:5
                  rule    row-off-seams

            Not checked (1 reason)
              What is missing here is not a pass.

              -   the substrate of barn roof is not given
                  barn/job.yaml:18:3
                  rules   clamp-on-wrong-substrate, sheet-too-thin

            Counts
              2 errors, 0 warnings, 1 note.
              1 accepted deviation, 1 known debt.
              2 rules gave 187 answers, one for each part of the job that they look at:
              170 met, 16 not met (5 findings), 1 not checked (1 reason).
              1 place could not be read: what depends on it was not reviewed.
            """);
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 57, 80, 100, 120})
  void noLineOfProseIsWiderThanTheTerminal(int width) {
    assertThat(text(SampleReview.full(), width).lines())
        .allSatisfy(line -> assertThat(Columns.of(line)).isLessThanOrEqualTo(width));
  }

  @Test
  void aLongWordIsBrokenRatherThanRunningOverTheEdge() {
    String word = "x".repeat(300);
    assertThat(text(SampleReview.saying(word), 60).lines())
        .allSatisfy(line -> assertThat(Columns.of(line)).isLessThanOrEqualTo(60));
  }

  @Test
  void whatATerminalWouldObeyIsSpelledOut() {
    String text =
        text(SampleReview.saying("red \u001b[31m, bell \u0007, \u009b, \u202e turned"), 80);
    assertThat(text)
        .contains("red \\u{1b}[31m, bell \\u{7}, \\u{9b}, \\u{202e} turned")
        .doesNotContain("\u001b", "\u0007", "\u009b", "\u202e");
  }

  @Test
  void upToFourPlacesAreAllShown() {
    assertThat(text(SampleReview.of(SampleReview.zone(4)), 80))
        .contains("module R1C6 / lower edge: 84 mm against 234 mm")
        .doesNotContain("more");
  }

  @Test
  void ofManyPlacesTheWorstAreShownWithTheirNumbersAndTheRestNamed() {
    assertThat(text(SampleReview.of(SampleReview.zone(17)), 80))
        .contains("module R1C5 / lower edge: 83 mm against 234 mm\n")
        .contains("others  fields.A / module R1C6-R1C19 / lower edge\n")
        .doesNotContain("more");
  }

  @Test
  void whatIsNotCheckedForWantOfOneKeyStandsTogether() {
    List<NotChecked> open =
        List.of(
            open("field A gives no load (design-load)", 3),
            open("the metal of roof is not given (metal)", 4),
            open("field B gives no load (design-load)", 9));
    Review review = new Review("job.yaml", "Shed", 2, List.of(), List.of(), open, List.of());
    assertThat(text(review, 80))
        .contains(
            """
              -   field A gives no load (design-load)
              -   field B gives no load (design-load)
                  job.yaml:3:1
                  job.yaml:9:1
                  rules   rule
              -   the metal of roof is not given (metal)
            """);
  }

  private static NotChecked open(String reason, int line) {
    Position at = new Position(line, 1);
    return new NotChecked("rule", Subject.of("roof"), reason, new Span("job.yaml", at, at));
  }

  @Test
  void theSameReviewGivesTheSameText() {
    assertThat(text(SampleReview.full(), 80)).isEqualTo(text(SampleReview.full(), 80));
  }

  @Test
  void theCautionsSayThatAReviewApprovesNothing() {
    Sheet sheet = new Sheet(80, Paint.NONE);
    new TextReport(sheet).writeCautions();
    assertThat(sheet.toString()).contains("not an engineer's approval").contains("Fall protection");
  }

  @Test
  void aReviewOfNothingSaysSoInEveryForm() {
    Review nothing = new Review("job.yaml", "Shed", 0, List.of(), List.of(), List.of(), List.of());
    Sheet quiet = new Sheet(80, Paint.NONE);
    new TextReport(quiet).writeQuietly(nothing);
    StringBuilder line = new StringBuilder();
    new LineReport(line).writeQuietly(nothing);

    assertThat(text(nothing, 80)).contains("  No module was reviewed.\n");
    assertThat(quiet.toString()).isEqualTo("job.yaml\nNo module was reviewed.\n");
    assertThat(line.toString()).startsWith("job.yaml:1:1: note: no module was reviewed");
  }

  @Test
  void numbersThatAreAllAlikeAreSaidOnce() {
    Finding zone = SampleReview.zone(1);
    Place place = zone.places().get(0);
    Finding twice =
        new Finding(
            zone.rule(),
            zone.severity(),
            zone.title(),
            zone.message(),
            zone.reason(),
            zone.remedy(),
            zone.basis(),
            zone.cause(),
            zone.at(),
            zone.comparison(),
            List.of(place, new Place(Subject.of("fields.B"), place.at(), place.comparison())),
            Optional.empty(),
            Optional.empty());

    assertThat(text(SampleReview.of(twice), 80))
        .contains("places  fields.A / module R1C3 / lower edge\n              fields.B\n");
  }

  @Test
  void manyRulesAreOnlyCounted() {
    List<NotChecked> all =
        IntStream.range(0, 20)
            .mapToObj(n -> new NotChecked("rule-" + n, Subject.of("f"), "why", Span.startOf("j")))
            .toList();
    Review review = new Review("j", "Shed", 1, List.of(), List.of(), all, List.of());

    assertThat(text(review, 80)).contains("rules   rule-0, rule-1 and 18 more\n");
  }

  @Test
  void whatOnlyFollowsStandsUnderTheFindingItFollowsFrom() {
    assertThat(text(SampleReview.withConsequence(), 80))
        .contains("Errors (2)", "Warnings (2)")
        .contains("brings  note: the pitch of barn roof is assumed (roof-fact-assumed)\n")
        .contains("2 errors, 2 warnings, 1 note; 1 of them only follows from others.")
        .doesNotContain("Notes (");
  }

  @Test
  void theThreeThingsToFixFirstAreTheMostSevereAndOfTheseTheWidest() {
    assertThat(text(SampleReview.withConsequence(), 80))
        .contains(
            """
            Fix first
              - Clamp outside the module's clamp zone (barn/job.yaml:40:12; 16 places; 1
                follows)
              - Frame height outside the mid clamp's range (barn/job.yaml:34:16)
              - Title of b (barn/job.yaml:40:12; 3 places)
            """);
  }

  @Test
  void threeFindingsAreFewEnoughToChooseAmong() {
    assertThat(text(SampleReview.full(), 80)).doesNotContain("Fix first");
  }

  @Test
  void whatFollowsFromAFindingThatIsNotThereStandsAlone() {
    Finding orphan = SampleReview.frame().following(SampleReview.zone(1).name());

    assertThat(text(SampleReview.of(orphan), 80)).contains("Errors (1)", "1.  Frame height");
  }

  @Test
  void marksAloneSayNothingOfWhatWasNotChecked() {
    Sheet sheet = new Sheet(80, Paint.NONE);
    new TextReport(sheet).writeMarks(SampleReview.full());
    assertThat(sheet.toString())
        .contains("Could not be read (1)", "Errors (2)")
        .doesNotContain("Not checked", "Counts");
  }
}
