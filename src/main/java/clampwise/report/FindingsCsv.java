package clampwise.report;

import clampwise.finding.Accepted;
import clampwise.finding.Basis;
import clampwise.finding.Comparison;
import clampwise.finding.Finding;
import clampwise.finding.FindingName;
import clampwise.finding.FindingOrder;
import clampwise.finding.Place;
import clampwise.review.Cautions;
import clampwise.review.Review;
import clampwise.source.CsvText;
import clampwise.source.Problem;
import clampwise.source.Span;
import clampwise.units.QuantityPrint;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Reviews as one table for spreadsheets: a row for each finding, what could not be read and what
 * was not checked, and last what the list is not.
 */
final class FindingsCsv {

  private static final int DIGITS = 6;

  private static final List<String> COLUMNS =
      List.of(
          "file",
          "job",
          "number",
          "kind",
          "rule",
          "title",
          "subject",
          "line",
          "column",
          "found",
          "measured",
          "limit",
          "measured (SI)",
          "limit (SI)",
          "share of limit",
          "places",
          "where",
          "follows from",
          "accepted",
          "reason",
          "remedy",
          "basis");

  private final CsvText out;
  private final Citations citations = Citations.packed();
  private final Map<String, String> row = new HashMap<>();

  private FindingsCsv(CsvText out) {
    this.out = out;
  }

  static void write(Run run, Appendable out) throws IOException {
    out.append(CsvText.UTF_8_MARK);
    FindingsCsv table = new FindingsCsv(new CsvText(out));
    table.out.row(COLUMNS);
    for (Review review : run.reviews()) {
      table.write(review);
    }
    if (run.isFaulty()) {
      table.put("kind", "fault").put("found", run.outcome()).end();
    }
    table.put("kind", "caution").put("found", Cautions.NO_APPROVAL).end();
  }

  private void write(Review review) throws IOException {
    for (Problem problem : review.problems()) {
      begin(review, "not readable", problem.at());
      put("found", ProblemLine.of(problem)).end();
    }
    if (review.modules() == 0) {
      begin(review, "not reviewed", Span.startOf(review.file()));
      put("found", SummaryText.NO_MODULE).end();
    }
    findings(review);
    for (Accepted one : review.accepted()) {
      row(review, one.finding(), "accepted " + one.finding().severity().word());
      put("accepted", one.words() + " (" + one.at() + ")").end();
    }
    for (NotCheckedGroup group : NotCheckedGroup.of(review.notChecked())) {
      begin(review, "not checked", group.at());
      put("rule", String.join(", ", group.rules())).put("found", group.reason());
      put("places", String.valueOf(group.subjects())).end();
    }
  }

  /** In the order of the printed list, what only follows from a finding below it. */
  private void findings(Review review) throws IOException {
    FindingOrder order = FindingOrder.of(review.findings());
    for (FindingOrder.Group group : order.groups()) {
      for (Finding finding : group.findings()) {
        String number = order.number(finding).map(String::valueOf).orElse("");
        finding(review, finding, number);
        for (Finding after : order.followers().after(finding)) {
          finding(review, after, number);
        }
      }
    }
  }

  private void finding(Review review, Finding finding, String number) throws IOException {
    row(review, finding, finding.severity().word());
    put("number", number).end();
  }

  private void row(Review review, Finding finding, String kind) {
    begin(review, kind, finding.at());
    put("rule", finding.rule()).put("title", finding.title());
    put("subject", finding.cause().path()).put("found", finding.message());
    finding.comparison().ifPresent(this::numbers);
    places(finding.places());
    put("follows from", finding.follows().map(FindingName::rule).orElse(""));
    put("reason", finding.reason()).put("remedy", finding.remedy());
    put("basis", basis(finding.basis()));
  }

  private void numbers(Comparison numbers) {
    Shown shown = Shown.of(numbers);
    put("measured", shown.measured()).put("limit", shown.limit());
    put("measured (SI)", number(numbers.measuredSi())).put("limit (SI)", number(numbers.limitSi()));
    put("share of limit", number(numbers.ratio()));
  }

  private static String number(double value) {
    return Double.isFinite(value) ? QuantityPrint.significant(value, DIGITS) : "";
  }

  private void places(List<Place> places) {
    Set<String> paths = new LinkedHashSet<>();
    places.forEach(place -> paths.add(place.subject().path()));
    put("places", String.valueOf(Math.max(1, places.size())));
    put("where", String.join("; ", PlaceNames.lines(paths)));
  }

  private String basis(List<Basis> all) {
    List<String> texts = new ArrayList<>();
    all.forEach(basis -> texts.add(citations.text(basis)));
    return String.join("; ", texts);
  }

  private void begin(Review review, String kind, Span at) {
    put("file", at.file()).put("job", review.title()).put("kind", kind);
    put("line", String.valueOf(at.start().line()));
    put("column", String.valueOf(at.start().column()));
  }

  private FindingsCsv put(String column, String text) {
    row.put(column, Harmless.of(text));
    return this;
  }

  private void end() throws IOException {
    List<String> cells = new ArrayList<>();
    for (String column : COLUMNS) {
      cells.add(row.getOrDefault(column, ""));
    }
    out.row(cells);
    row.clear();
  }
}
