package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LineReportTest {

  private final StringBuilder out = new StringBuilder();

  @Test
  void everyMarkIsOneLineThatEditorsFollow() {
    new LineReport(out).write(SampleReview.full());
    assertThat(out.toString().lines())
        .containsExactly(
            "barn/job.yaml:12:5: error: unknown key 'heigth'; expected a key of a panel; nearest:"
                + " height [not-readable]",
            "barn/job.yaml:34:16: error: mid clamp MC-35 grips 33 mm to 37 mm; the frame of"
                + " PV-108-30 is 30 mm [frame-outside-mid-clamp-range]",
            "barn/job.yaml:40:12: error: the clamp on seam 7 sits 81 mm from the corner of A.R1C3;"
                + " the rated zone begins at 234 mm (16 places) [clamp-outside-clamp-zone]",
            "barn/job.yaml:20:5: note: the pitch of barn roof is assumed [roof-fact-assumed]",
            "barn/job.yaml:40:12: note: message of mid-clamp-shimmed (2 places) (accepted by roof"
                + " engineer until 2027-03-31: the crew has shims of 2 mm for this row)"
                + " [mid-clamp-shimmed]",
            "barn/job.yaml:40:12: note: message of row-off-seams (2 places) (known debt: recorded"
                + " on 2026-02-03) [row-off-seams]",
            "barn/job.yaml:18:3: note: not checked: the substrate of barn roof is not given"
                + " [clamp-on-wrong-substrate, sheet-too-thin]");
  }

  @Test
  void aLineSaysFromWhatItsFindingFollows() {
    new LineReport(out).write(SampleReview.withConsequence());
    assertThat(out.toString())
        .contains(
            "note: the pitch of barn roof is assumed (follows from clamp-outside-clamp-zone)"
                + " [roof-fact-assumed]\n");
  }

  @Test
  void aLineBreakInAJobDoesNotBreakTheLine() {
    new LineReport(out).write(SampleReview.saying("one\ntwo\rthree"));
    assertThat(out.toString().lines()).hasSize(1).first().asString().contains("one two\\u{d}three");
  }
}
