package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.facts.layout.Attachment;
import clampwise.review.Cautions;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Tables behind the mark that spreadsheets look for, as Jackson's reader of CSV has them; with
 * Commons CSV they were written.
 */
class CsvReportsTest {

  /** The rows by the names of their columns; one that is longer than the heading is refused. */
  private static List<Map<String, String>> table(ReportKind kind, Run run) throws IOException {
    String csv = Snapshot.text(kind, run);
    assertThat(csv).startsWith("\uFEFF").endsWith("\r\n");
    CsvMapper mapper =
        CsvMapper.builder().enable(CsvParser.Feature.FAIL_ON_MISSING_COLUMNS).build();
    try (MappingIterator<Map<String, String>> rows =
        mapper
            .readerForMapOf(String.class)
            .with(CsvSchema.emptySchema().withHeader())
            .readValues(Snapshot.bytes(kind, run))) {
      return rows.readAll();
    }
  }

  private static Run example(String name) {
    Review review = new Reviewer().review(Path.of("examples/" + name + "/job.yaml"));
    return new Run(List.of(review), "0.1.0", 1);
  }

  @Test
  void everyFindingIsARowAndWhatWasNotCheckedAndTheCautionToo() throws IOException {
    Run run = example("barn-junior");
    Review review = run.reviews().get(0);
    List<Map<String, String>> rows = table(ReportKind.FINDINGS, run);

    assertThat(rows).allMatch(row -> row.containsKey("file"));
    assertThat(rows)
        .filteredOn(row -> List.of("error", "warning", "note").contains(row.get("kind")))
        .hasSize(review.findings().size())
        .allMatch(row -> !row.get("number").isEmpty() && !row.get("remedy").isEmpty());
    assertThat(rows)
        .filteredOn(row -> row.get("kind").equals("not checked"))
        .hasSize(NotCheckedGroup.of(review.notChecked()).size());
    assertThat(rows.get(rows.size() - 1).get("found")).isEqualTo(Cautions.NO_APPROVAL);
  }

  @Test
  void numbersStayNumbers() throws IOException {
    List<Map<String, String>> rows = table(ReportKind.FINDINGS, Snapshot.sample());
    Map<String, String> frame = rows.get(1);
    assertThat(frame.get("measured")).isEqualTo("30 mm");
    assertThat(Double.parseDouble(frame.get("measured (SI)"))).isEqualTo(0.03);
    assertThat(table(ReportKind.FINDINGS, HostileReview.run()))
        .extracting(row -> row.get("measured (SI)"))
        .contains("-0.5");
  }

  @Test
  void whatFollowsStandsBelowItsFindingUnderOneNumber() throws IOException {
    assertThat(table(ReportKind.FINDINGS, Snapshot.sample()))
        .filteredOn(row -> row.get("file").equals("barn/job.yaml") && row.get("job").equals("Shed"))
        .extracting(row -> row.get("number") + " " + row.get("rule"))
        .containsSequence("2 clamp-outside-clamp-zone", "2 roof-fact-assumed");
  }

  @Test
  void everyAttachmentIsARowWithItsPlaceItsPartAndItsForces() throws IOException {
    Run run = example("barn");
    List<Attachment> attachments =
        run.reviews().get(0).facts().orElseThrow().layout().fields().stream()
            .flatMap(field -> field.attachments().stream())
            .toList();
    List<Map<String, String>> rows = table(ReportKind.ATTACHMENTS, run);

    assertThat(rows).allMatch(row -> row.containsKey("file")).hasSize(attachments.size() + 1);
    for (int i = 0; i < attachments.size(); i++) {
      Map<String, String> row = rows.get(i);
      Attachment one = attachments.get(i);
      assertThat(row.get("attachment")).isEqualTo(one.name());
      assertThat(Double.parseDouble(row.get("along the eave (m)")))
          .isBetween(one.alongM() - 1e-4, one.alongM() + 1e-4);
      assertThat(row.get("part")).isEqualTo(one.part().orElseThrow().value());
      assertThat(Double.parseDouble(row.get("share of strength"))).isBetween(0.0, 1.0);
      assertThat(Double.parseDouble(row.get("force across the roof (N)"))).isPositive();
    }
  }

  @Test
  void anAttachmentWhoseStrengthIsNotKnownSaysWhyAndHasNoNumber() throws IOException {
    List<Map<String, String>> rows = table(ReportKind.ATTACHMENTS, example("barn-junior"));
    assertThat(rows)
        .filteredOn(row -> row.get("share of strength").isEmpty())
        .isNotEmpty()
        .allMatch(row -> !row.get("not checked").isEmpty());
  }

  @Test
  void noCellOfAHostileJobIsAFormulaOrBreaksTheTable() throws IOException {
    for (ReportKind kind : List.of(ReportKind.FINDINGS, ReportKind.ATTACHMENTS)) {
      List<Map<String, String>> rows = table(kind, HostileReview.run());
      assertThat(rows).hasSizeGreaterThan(HostileReview.TEXTS.size());
      for (Map<String, String> row : rows) {
        for (String cell : row.values()) {
          assertThat(Harmless.of(cell)).isEqualTo(cell);
          assertThat(cell).matches("(?s)(-?[0-9.]+)?|[^=+\\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20].*");
        }
      }
    }
  }

  @Test
  void theSameRunGivesTheSameBytes() {
    for (ReportKind kind : List.of(ReportKind.FINDINGS, ReportKind.ATTACHMENTS)) {
      assertThat(Snapshot.bytes(kind, example("barn-junior")))
          .isEqualTo(Snapshot.bytes(kind, example("barn-junior")));
    }
  }

  @Test
  void theEndingTellsWhichTable() {
    assertThat(ReportKind.of("a/attachments.csv")).contains(ReportKind.ATTACHMENTS);
    assertThat(ReportKind.of("barn-Attachments.CSV")).contains(ReportKind.ATTACHMENTS);
    assertThat(ReportKind.of("findings.csv")).contains(ReportKind.FINDINGS);
  }

  @Test
  void theSampleIsWrittenAsItWasLookedAt() throws IOException {
    String csv = Snapshot.text(ReportKind.FINDINGS, Snapshot.sample());
    Snapshot.check("sample.csv", csv.replace("\r\n", "\n"));
  }
}
