package clampwise.report;

import clampwise.finding.Finding;
import clampwise.finding.FindingOrder;
import clampwise.finding.Severity;
import clampwise.plan.PlanSheet;
import clampwise.review.Cautions;
import clampwise.review.Review;
import clampwise.source.Problem;
import clampwise.source.SourceText;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;

/**
 * Reviews as one page that needs nothing else: no network, and no script to be read. Its policy
 * lets a browser run this page's own script and no other.
 */
final class HtmlReport {

  private final Html html;
  private final Run run;

  private HtmlReport(Run run, Appendable out) {
    this.run = run;
    this.html = new Html(out);
  }

  static void write(Run run, Appendable out) throws IOException {
    new HtmlReport(run, out).page();
  }

  private void page() throws IOException {
    String style = resource("page.css") + SvgPlan.styles(".plan");
    String script = resource("page.js");
    html.markup("<!DOCTYPE html>\n").open("html", "lang", "en").markup("\n");
    html.open("head").markup("\n<meta charset=\"utf-8\">\n");
    String policy =
        "default-src 'none'; img-src data:; base-uri 'none'; form-action 'none'; style-src "
            + hash(style)
            + "; script-src "
            + hash(script);
    html.markup("<meta http-equiv=\"Content-Security-Policy\" content=\"" + policy + "\">\n");
    html.markup("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    html.markup(
        "<meta name=\"generator\" content=\"clampwise " + Markup.of(run.version()) + "\">\n");
    html.element("title", "Review of " + titles());
    html.markup("<style>" + style + "</style>\n").close();
    html.open("body").markup("\n");
    html.element("a", "Skip to the findings", "href", "#findings", "class", "skip");
    body();
    html.markup("<script>" + script + "</script>\n");
    html.close().close();
  }

  private String titles() {
    return run.reviews().isEmpty() ? "no job" : TextReport.title(run.reviews().get(0));
  }

  private void body() throws IOException {
    html.open("main");
    int number = 0;
    for (Review review : run.reviews()) {
      number++;
      review(review, number == 1 ? "" : "job" + number + "-");
    }
    cautions();
    html.close();
  }

  /**
   * One review.
   *
   * @param ids what the ids of its parts begin with
   */
  private void review(Review review, String ids) throws IOException {
    FindingOrder order = FindingOrder.of(review.findings());
    List<PlanSheet> sheets = run.sheets(review);
    html.open("section", "class", "review", "data-ids", ids);
    head(review);
    problems(review.problems());
    first(order, review, ids);
    new HtmlPlan(html, ids).write(sheets);
    new HtmlFindings(html, run, review, order, ids).write();
    new HtmlAccepted(html).write(review.accepted(), ids + "accepted");
    new HtmlModules(html, review, order, ids).write();
    new HtmlNotChecked(html).write(review);
    html.close();
  }

  private void head(Review review) throws IOException {
    html.open("header");
    html.element("h1", "Review of " + TextReport.title(review));
    html.open("p", "class", "counts");
    for (Severity severity : Severity.values()) {
      long count = review.findings().stream().filter(f -> f.severity() == severity).count();
      html.element(
          "span",
          Counted.of((int) count, severity.word()),
          "class",
          "chip " + severity.word() + (count == 0 ? " none" : ""));
    }
    int reasons = NotCheckedGroup.of(review.notChecked()).size();
    html.element("span", "not checked for " + Counted.of(reasons, "reason"), "class", "chip open");
    if (!review.accepted().isEmpty()) {
      html.element("span", AcceptedWords.counts(review.accepted()), "class", "chip open");
    }
    html.close();
    html.open("dl", "class", "about");
    entry("Job file", review.file());
    for (SourceText source : review.sources()) {
      entry("SHA-256 of " + source.file(), source.sha256());
    }
    entry("Modules laid out", Integer.toString(review.modules()));
    entry("Reviewed with", "clampwise " + run.version());
    html.close();
    html.element("p", Cautions.NO_APPROVAL, "class", "approval");
    if (review.modules() == 0) {
      html.element("p", SummaryText.NO_MODULE, "class", "alarm");
    }
    html.close();
  }

  private void entry(String term, String value) throws IOException {
    html.open("div").element("dt", term).element("dd", value).close();
  }

  private void problems(List<Problem> problems) throws IOException {
    if (problems.isEmpty()) {
      return;
    }
    html.open("section", "class", "problems");
    html.element("h2", "Could not be read (" + problems.size() + ")");
    html.element("p", "What depends on these places was not reviewed.");
    html.open("ul");
    for (Problem problem : problems) {
      html.open("li").element("code", problem.at().toString(), "class", "place");
      String nearest = problem.nearest().map(near -> "; the nearest is " + near).orElse("");
      html.text(" " + problem.found() + "; expected " + problem.expected() + nearest);
      html.close();
    }
    html.close().close();
  }

  private void first(FindingOrder order, Review review, String ids) throws IOException {
    List<Finding> first = FixFirst.of(order.followers());
    if (first.isEmpty()) {
      html.element("p", nothing(review), "class", "clear");
      return;
    }
    html.open("section", "class", "first").element("h2", "Fix first");
    html.open("ol");
    for (Finding finding : first) {
      String number = order.number(finding).map(String::valueOf).orElse("");
      html.open("li", "class", "card " + finding.severity().word());
      html.open("p", "class", "card-title");
      html.element("span", finding.severity().word(), "class", "chip " + finding.severity().word());
      html.element("a", number + ". " + finding.title(), "href", "#" + ids + "finding-" + number);
      html.close();
      html.element("p", finding.message());
      html.element("p", "Remedy: " + finding.remedy(), "class", "remedy");
      html.close();
    }
    html.close().close();
  }

  /** What is said where nothing is open. */
  static String nothing(Review review) {
    return review.accepted().isEmpty()
        ? "No rule found anything to change. That is no approval."
        : AcceptedWords.NOTHING_OPEN;
  }

  private void cautions() throws IOException {
    html.open("section", "class", "cautions").element("h2", "On the roof").open("ul");
    for (String caution : Cautions.onTheRoof()) {
      html.element("li", caution);
    }
    html.close().element("p", Cautions.NO_APPROVAL).close();
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  static String resource(String name) {
    try (InputStream in = HtmlReport.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is not packed with the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
