package clampwise.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.source.Position;
import clampwise.source.Span;
import org.junit.jupiter.api.Test;

class JobReaderTest {

  @Test
  void everyValueKnowsItsPlaceAndItsUnit() {
    ReadJob read = ReadJob.withField("gap: 3/4 in");
    Quantity.Length gap = read.field("A").gap().orElseThrow();
    assertThat(read.problems()).isEmpty();
    assertThat(gap.m()).isCloseTo(0.01905, within(1e-12));
    assertThat(gap.unit().symbol()).isEqualTo("in");
    assertThat(gap.at()).isEqualTo(span(13, 10, 16));
  }

  @Test
  void bothHalvesOfASizeKnowTheirPlace() {
    Size size =
        ReadJob.of(ReadJob.SMALL)
            .job()
            .orElseThrow()
            .planes()
            .find("p")
            .orElseThrow()
            .size()
            .orElseThrow();
    assertThat(size.along().at()).isEqualTo(span(5, 36, 42));
    assertThat(size.up().at()).isEqualTo(span(5, 45, 59));
    assertThat(size.up().m()).isCloseTo(9.6393, within(1e-9));
  }

  @Test
  void whatIsNotWrittenIsEmpty() {
    Field field = ReadJob.of(ReadJob.SMALL).field("A");
    assertThat(field.gap()).isEmpty();
    assertThat(field.columns()).isEmpty();
    assertThat(field.allowedSpacing().isEmpty()).isTrue();
  }

  @Test
  void rangesAreReadInAllTheirForms() {
    for (String range :
        new String[] {"30 mm to 40 mm", "30 to 40 mm", "30-40 mm", "[30 mm, 4 cm]"}) {
      ReadJob read = ReadJob.of("job: j\nparts: {mid-clamps: {M: {frame-height: " + range + "}}}");
      LengthRange height =
          read.job()
              .orElseThrow()
              .parts()
              .orElseThrow()
              .midClamps()
              .find("M")
              .orElseThrow()
              .frameHeight()
              .orElseThrow();
      assertThat(height.min().m()).as(range).isCloseTo(0.03, within(1e-12));
      assertThat(height.max().m()).as(range).isCloseTo(0.04, within(1e-12));
    }
  }

  @Test
  void bareNumbersTakeTheDeclaredUnit() {
    ReadJob read =
        ReadJob.of("units: {length: mm, pressure: psf}\n" + ReadJob.SMALL + "    gap: 12\n");
    assertThat(read.problems()).isEmpty();
    assertThat(read.field("A").gap().orElseThrow().m()).isCloseTo(0.012, within(1e-12));
  }

  @Test
  void likeTakesWhatTheFieldDoesNotWrite() {
    ReadJob read = ReadJob.withField("gap: 12 mm");
    assertThat(read.problems()).isEmpty();
    ReadJob like =
        ReadJob.of(ReadJob.SMALL + "    gap: 12 mm\n  B: {like: A, orientation: portrait}\n");
    assertThat(like.problems()).isEmpty();
    assertThat(like.field("B").gap().orElseThrow().at().start()).isEqualTo(new Position(13, 10));
    assertThat(like.field("B").orientation().value()).isEqualTo(Field.Orientation.PORTRAIT);
  }

  @Test
  void likeMayComeBeforeTheFieldItNames() {
    String text =
        ReadJob.SMALL.replace("  A:", "  B: {like: C, gap: ~}\n  C: {like: A, gap: 5 mm}\n  A:");
    ReadJob read = ReadJob.of(text);
    assertThat(read.problems()).isEmpty();
    assertThat(read.field("B").gap()).isEmpty();
    assertThat(read.field("C").plane().value()).isEqualTo("p");
  }

  @Test
  void anInvalidOptionalValueIsLeftOutAndTheRestIsRead() {
    ReadJob read = ReadJob.withField("gap: 12 psf\ntop-height: 90 mm");
    assertThat(read.problems()).hasSize(1);
    assertThat(read.field("A").gap()).isEmpty();
    assertThat(read.field("A").topHeight()).isPresent();
  }

  @Test
  void anEntryWithoutARequiredKeyIsDroppedButItsNameIsRemembered() {
    ReadJob read = ReadJob.of(ReadJob.SMALL.replace("panel: r, ", ""));
    assertThat(read.said()).containsExactly("5:6 a plane without panel; the key panel");
    assertThat(read.job().orElseThrow().planes().unreadable()).containsExactly("p");
  }

  @Test
  void aJobWithoutANameIsStillReviewed() {
    ReadJob read = ReadJob.of(ReadJob.SMALL.replace("job: Small barn\n", ""));
    assertThat(read.said())
        .containsExactly("1:1 a job without a name; the key job with the name on the drawings");
    assertThat(read.field("A").plane().value()).isEqualTo("p");
  }

  @Test
  void nothingIsReviewedAfterASyntaxErrorButWhatStandsBeforeItIsChecked() {
    ReadJob read = ReadJob.withField("gap: 12 psf\nblock: {at: [1 m, 1 m]");
    assertThat(read.job()).isEmpty();
    assertThat(read.problems()).hasSize(2);
    assertThat(read.said().get(0)).startsWith("13:10 \"12 psf\", which is a pressure");
  }

  private static Span span(int line, int from, int to) {
    return new Span("job.yaml", new Position(line, from), new Position(line, to));
  }
}
