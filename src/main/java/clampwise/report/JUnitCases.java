package clampwise.report;

import clampwise.finding.Accepted;
import clampwise.finding.Basis;
import clampwise.finding.Comparison;
import clampwise.finding.Coverage;
import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import clampwise.finding.Place;
import clampwise.report.JUnitCase.Outcome;
import clampwise.review.Review;
import clampwise.source.Problem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The test cases of a job: what could not be read, then rule by rule. */
final class JUnitCases {

  /** Takes test cases, one after the other. */
  @FunctionalInterface
  interface Taker {
    void take(JUnitCase one) throws IOException;
  }

  /** Of the parts that meet a rule only the number is known. */
  private static final String MET = "parts of the job that meet it";

  private final Review review;
  private final Map<String, List<Finding>> findings = new TreeMap<>();
  private final Map<String, List<NotChecked>> gaps = new TreeMap<>();
  private final Map<String, Integer> met = new TreeMap<>();
  private final Citations citations = Citations.packed();

  JUnitCases(Review review) {
    this.review = review;
    for (Coverage coverage : review.coverage()) {
      met.put(coverage.rule(), coverage.met());
    }
    for (Finding finding : review.findings()) {
      findings.computeIfAbsent(finding.rule(), unseen -> new ArrayList<>()).add(finding);
      met.putIfAbsent(finding.rule(), 0);
    }
    for (NotChecked gap : review.notChecked()) {
      gaps.computeIfAbsent(gap.rule(), unseen -> new ArrayList<>()).add(gap);
      met.putIfAbsent(gap.rule(), 0);
    }
  }

  /** Gives all cases, in the same order each time. */
  void each(Taker taker) throws IOException {
    for (Problem problem : review.problems()) {
      String message = problem.at() + ": " + ProblemLine.of(problem);
      taker.take(JUnitCase.error("not-readable", problem.found(), message));
    }
    for (Accepted one : review.accepted()) {
      Finding finding = one.finding();
      String message = one.words() + "; found: " + finding.message() + " (" + finding.at() + ")";
      taker.take(JUnitCase.skipped(finding.rule(), finding.cause().path(), message));
    }
    if (review.modules() == 0) {
      taker.take(JUnitCase.skipped("nothing-reviewed", review.file(), SummaryText.NO_MODULE));
    }
    for (Map.Entry<String, Integer> rule : met.entrySet()) {
      rule(rule.getKey(), rule.getValue(), taker);
    }
  }

  private void rule(String rule, int passed, Taker taker) throws IOException {
    for (Finding finding : findings.getOrDefault(rule, List.of())) {
      failures(finding, taker);
    }
    for (NotChecked gap : gaps.getOrDefault(rule, List.of())) {
      String reason = "not checked: " + gap.reason() + " (" + gap.at() + ")";
      taker.take(JUnitCase.skipped(rule, gap.subject().path(), reason));
    }
    if (passed > 0) {
      taker.take(JUnitCase.passed(rule, MET, passed + " met"));
    }
  }

  /** One for each part of the job at which a finding shows; the first has it at length. */
  private void failures(Finding finding, Taker taker) throws IOException {
    String type = finding.severity().word();
    Set<String> taken = new HashSet<>();
    for (Place place : finding.places()) {
      String name = place.subject().path();
      if (taken.add(name)) {
        boolean first = taken.size() == 1;
        String message = first ? finding.message() : inShort(finding, place);
        String text = first ? atLength(finding) : place.at() + "\n";
        taker.take(new JUnitCase(finding.rule(), name, Outcome.FAILURE, type, message, text));
      }
    }
    if (taken.isEmpty()) {
      String name = finding.cause().path();
      String text = atLength(finding);
      taker.take(
          new JUnitCase(finding.rule(), name, Outcome.FAILURE, type, finding.message(), text));
    }
  }

  private static String inShort(Finding finding, Place place) {
    return finding.title() + place.comparison().map(JUnitCases::numbers).orElse("");
  }

  private static String numbers(Comparison numbers) {
    Shown shown = Shown.of(numbers);
    return ": " + shown.measured() + " against " + shown.limit();
  }

  private String atLength(Finding finding) {
    StringBuilder text = new StringBuilder();
    line(text, "", finding.at() + ": " + finding.severity().word() + ": " + finding.title());
    line(text, "found: ", finding.message());
    line(text, "why: ", finding.reason());
    line(text, "remedy: ", finding.remedy());
    for (Basis basis : finding.basis()) {
      line(text, "basis: ", citations.text(basis));
    }
    if (finding.places().size() > 1) {
      line(text, "places: ", String.valueOf(finding.places().size()));
    }
    finding
        .follows()
        .ifPresent(first -> line(text, "follows from: ", first.rule() + ", " + first.cause()));
    return text.toString();
  }

  private static void line(StringBuilder text, String label, String words) {
    text.append(label).append(Harmless.of(words)).append('\n');
  }
}
