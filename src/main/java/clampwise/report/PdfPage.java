package clampwise.report;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Term;
import clampwise.facts.loads.CalcSheet.Part;
import clampwise.finding.Finding;
import clampwise.finding.FindingOrder;
import clampwise.finding.FindingOrder.Group;
import clampwise.finding.Severity;
import clampwise.review.Cautions;
import clampwise.review.Review;
import clampwise.source.Problem;
import clampwise.source.SourceText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The text of the PDF as a page that is laid out on paper: well-formed, and without pictures. */
final class PdfPage {

  /** Title of the part that the drawings stand before. */
  static final String SHEET = "Calculation sheet";

  private final Run run;
  private final Html html;
  private final Citations citations = Citations.packed();

  PdfPage(Run run, Appendable out) {
    this.run = run;
    this.html = new Html(out);
  }

  void write() throws IOException {
    html.open("html", "lang", "en").open("head");
    html.element("title", "Review");
    html.markup("<style>" + HtmlReport.resource("paper.css") + "</style>");
    bookmarks();
    html.close().open("body");
    int number = 0;
    for (Review review : run.reviews()) {
      number++;
      review(review, "j" + number + "-");
    }
    html.close().close();
  }

  private void bookmarks() throws IOException {
    html.open("bookmarks");
    int number = 0;
    for (Review review : run.reviews()) {
      number++;
      String ids = "#j" + number + "-";
      bookmark(TextReport.title(review), ids + "head");
      bookmark("Findings", ids + "findings");
      if (!review.accepted().isEmpty()) {
        bookmark(AcceptedWords.TITLE, ids + "accepted");
      }
      bookmark("Not checked", ids + "not-checked");
      bookmark("Cautions and remarks", ids + "cautions");
      bookmark(SHEET, ids + "sheet");
    }
    html.close();
  }

  private void bookmark(String name, String href) throws IOException {
    html.open("bookmark", "name", Harmless.of(name), "href", href).close();
  }

  private void review(Review review, String ids) throws IOException {
    FindingOrder order = FindingOrder.of(review.findings());
    head(review, ids);
    problems(review.problems());
    first(order, review);
    findings(order, ids);
    new HtmlAccepted(html).write(review.accepted(), ids + "accepted");
    notChecked(review, ids);
    cautions(ids);
    sheet(review, ids);
  }

  private void head(Review review, String ids) throws IOException {
    html.element("p", "Design review", "class", "kind");
    html.element("h1", TextReport.title(review), "id", ids + "head");
    html.element("p", Cautions.NO_APPROVAL, "class", "approval");
    html.open("table", "class", "about");
    row("Findings", counts(review));
    row("Modules laid out", Integer.toString(review.modules()));
    row("Job file", review.file());
    for (SourceText source : review.sources()) {
      row("SHA-256 of " + source.file(), source.sha256());
    }
    row(
        "Parts",
        "findings; what was not checked; cautions and room for remarks; plan drawings; last and"
            + " longest, the calculation sheet for whoever follows the numbers");
    row("Reviewed with", "clampwise " + run.version());
    html.close();
  }

  private static String counts(Review review) {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long count = review.findings().stream().filter(f -> f.severity() == severity).count();
      counts.add(Counted.of((int) count, severity.word()));
    }
    int reasons = NotCheckedGroup.of(review.notChecked()).size();
    String accepted =
        review.accepted().isEmpty() ? "" : "; " + AcceptedWords.counts(review.accepted());
    String open = "; not checked for " + Counted.of(reasons, "reason");
    return String.join(", ", counts) + accepted + open;
  }

  private void row(String name, String value) throws IOException {
    html.open("tr").element("th", name).element("td", value).close();
  }

  private void problems(List<Problem> problems) throws IOException {
    if (problems.isEmpty()) {
      return;
    }
    html.element("h2", "Could not be read").open("ul");
    for (Problem problem : problems) {
      html.element(
          "li", problem.at() + ": " + problem.found() + "; expected " + problem.expected());
    }
    html.close();
  }

  private void first(FindingOrder order, Review review) throws IOException {
    List<Finding> first = FixFirst.of(order.followers());
    if (first.isEmpty()) {
      html.element("p", HtmlReport.nothing(review));
      return;
    }
    html.element("h2", "Fix first").open("ul", "class", "first");
    for (Finding finding : first) {
      String number = order.number(finding).map(n -> "No. " + n + ": ").orElse("");
      html.open("li").element("b", number + finding.title());
      html.element("div", finding.message()).element("div", "Remedy: " + finding.remedy()).close();
    }
    html.close();
  }

  private void findings(FindingOrder order, String ids) throws IOException {
    html.element("h2", "Findings", "id", ids + "findings");
    Set<Severity> headed = new LinkedHashSet<>();
    for (Group group : order.groups()) {
      if (headed.add(group.severity())) {
        String word = group.severity().word();
        html.element("h3", Character.toUpperCase(word.charAt(0)) + word.substring(1) + "s");
      }
      for (Finding finding : group.findings()) {
        finding(finding, order, group.place());
      }
    }
    if (order.groups().isEmpty()) {
      html.element("p", "None.");
    }
  }

  private void finding(Finding finding, FindingOrder order, String place) throws IOException {
    String number = order.number(finding).map(String::valueOf).orElse("");
    html.open("div", "class", "finding " + finding.severity().word());
    html.element("h4", number + ". " + finding.title());
    html.element("p", finding.message());
    html.open("table", "class", "parts");
    part("Why", finding.reason());
    part("Remedy", finding.remedy());
    part("Place", place + ", " + finding.at());
    places(finding);
    for (Finding after : order.followers().after(finding)) {
      part("Brings", after.severity().word() + ": " + after.message());
    }
    finding.chain().ifPresent(chain -> decisive(chain.sections()).forEach(this::work));
    List<String> basis = finding.basis().stream().map(citations::text).toList();
    part("Basis", String.join("; ", basis));
    part("Rule", finding.rule());
    html.close().close();
  }

  private void places(Finding finding) throws IOException {
    if (finding.places().size() > 1) {
      Set<String> paths = new LinkedHashSet<>();
      finding.places().forEach(one -> paths.add(one.subject().path()));
      part("Places", String.join("; ", PlaceNames.lines(paths)));
    }
  }

  private static List<String> decisive(List<Section> sections) {
    List<String> lines = new ArrayList<>();
    for (Section section : sections) {
      if (section.decides()) {
        Line last = section.lines().get(section.lines().size() - 1);
        lines.add(WorkText.equation(last, section.measure()));
      }
    }
    return lines;
  }

  private void work(String line) {
    try {
      part("Work", line);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private void part(String name, String text) throws IOException {
    if (!text.isEmpty()) {
      row(name, text);
    }
  }

  private void notChecked(Review review, String ids) throws IOException {
    html.element("h2", "Not checked", "id", ids + "not-checked");
    html.element("p", "What is missing here is not a pass.").open("ul");
    for (NotCheckedGroup group : NotCheckedGroup.of(review.notChecked())) {
      html.element("li", group.reason() + " (" + group.at() + "): " + group.rulesInShort());
    }
    html.close();
  }

  private void cautions(String ids) throws IOException {
    html.element("h2", "Cautions and remarks", "id", ids + "cautions").open("ul");
    for (String caution : Cautions.onTheRoof()) {
      html.element("li", caution);
    }
    html.close();
    html.element("p", "Remarks of the person who reads this, which are no approval either:");
    html.open("div", "class", "remarks").text(" ").close();
  }

  private void sheet(Review review, String ids) throws IOException {
    html.element("h2", SHEET, "id", ids + "sheet", "class", "new-page");
    html.element("p", Cautions.NO_APPROVAL_BY_NUMBERS, "class", "approval");
    List<Part> parts = review.sheet().parts();
    if (parts.isEmpty()) {
      html.element("p", "Nothing could be calculated; the review says what is missing.");
    }
    for (Part part : parts) {
      String zone = part.zone().isEmpty() ? "" : ", zone " + part.zone();
      String field = part.field().isEmpty() ? "" : "Field " + part.field() + zone + ": ";
      html.element("h3", field + part.title());
      for (Section section : part.sections()) {
        section(section);
      }
    }
  }

  private void section(Section section) throws IOException {
    html.element("h5", section.title()).open("ol", "class", "lines");
    for (Line line : section.lines()) {
      line(line, section.measure());
    }
    html.close();
  }

  private void line(Line line, Measure measure) throws IOException {
    Term result = line.result();
    String formula = line.formula().isEmpty() ? "" : " = " + WorkText.breakable(line.formula());
    html.open("li").text(result.meaning() + ": ");
    html.element("code", result.symbol() + formula + " = " + WorkDigits.text(result, measure));
    List<String> inputs = new ArrayList<>();
    for (Term input : line.inputs()) {
      inputs.add(input.symbol() + " = " + WorkDigits.text(input, measure));
    }
    html.text(inputs.isEmpty() ? "" : " with " + String.join(", ", inputs));
    html.element("span", WorkText.basis(line.source(), citations), "class", "source");
    html.element("span", line.note(), "class", "source");
    html.close();
  }
}
