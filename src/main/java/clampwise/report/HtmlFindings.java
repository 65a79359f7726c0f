package clampwise.report;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Term;
import clampwise.finding.Basis;
import clampwise.finding.Finding;
import clampwise.finding.FindingOrder;
import clampwise.finding.FindingOrder.Group;
import clampwise.finding.Severity;
import clampwise.review.Review;
import clampwise.rulebook.RulePage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The findings of a page, each with its reason, remedy, source, calculation and rule. */
final class HtmlFindings {

  private final Html html;
  private final FindingOrder order;
  private final String ids;
  private final Citations citations = Citations.packed();
  private final Excerpts excerpts;
  private final Map<String, RulePage> pages = new TreeMap<>();

  HtmlFindings(Html html, Run run, Review review, FindingOrder order, String ids) {
    this.html = html;
    this.order = order;
    this.ids = ids;
    this.excerpts = new Excerpts(review.sources());
    for (Finding finding : review.findings()) {
      if (!pages.containsKey(finding.rule())) {
        run.page(finding.rule()).ifPresent(page -> pages.put(finding.rule(), page));
      }
    }
  }

  void write() throws IOException {
    html.open("section", "class", "findings", "id", ids + "findings");
    html.element("h2", "Findings (" + order.followers().leading().size() + ")");
    if (!order.groups().isEmpty()) {
      filter();
    }
    for (Group group : order.groups()) {
      for (Finding finding : group.findings()) {
        finding(finding, group.place());
      }
    }
    html.close();
  }

  private void filter() throws IOException {
    html.open("form", "class", "filter needs-script", "aria-label", "Filter findings");
    html.open("fieldset").element("legend", "Severity");
    for (Severity severity : Severity.values()) {
      html.open("label");
      html.markup("<input type=\"checkbox\" checked data-severity=\"" + severity.word() + "\">");
      html.text(" " + severity.word()).close();
    }
    html.close();
    Set<String> topics = new LinkedHashSet<>();
    Set<String> places = new LinkedHashSet<>();
    for (Group group : order.groups()) {
      places.add(group.place());
      group.findings().forEach(finding -> topics.add(topic(finding)));
    }
    choice("Topic", "topic", topics.stream().sorted().toList());
    choice("Place", "place", new ArrayList<>(places));
    html.open("label").text("Words ");
    html.markup("<input type=\"search\" data-filter=\"words\">").close();
    html.element("output", "", "class", "shown", "aria-live", "polite");
    html.close();
  }

  private void choice(String label, String name, List<String> values) throws IOException {
    html.open("label").text(label + " ").open("select", "data-filter", name);
    html.element("option", "all", "value", "");
    for (String value : values) {
      html.element("option", value, "value", value);
    }
    html.close().close();
  }

  private String topic(Finding finding) {
    RulePage page = pages.get(finding.rule());
    return page == null ? "other" : page.topic();
  }

  private void finding(Finding finding, String place) throws IOException {
    String number = order.number(finding).map(String::valueOf).orElse("");
    html.open(
        "article",
        "class",
        "finding " + finding.severity().word(),
        "id",
        ids + "finding-" + number,
        "tabindex",
        "-1",
        "data-number",
        number,
        "data-severity",
        finding.severity().word(),
        "data-topic",
        topic(finding),
        "data-place",
        place);
    html.open("h3");
    html.element("span", finding.severity().word(), "class", "chip " + finding.severity().word());
    html.text(" " + number + ". " + finding.title()).close();
    html.element("p", finding.message(), "class", "message");
    html.open("dl");
    entry("Why", finding.reason());
    entry("Remedy", finding.remedy());
    entry("Place", place);
    html.close();
    places(finding);
    after(finding);
    excerpts.write(finding.at(), html);
    work(finding);
    basis(finding.basis());
    rule(finding);
    html.element("a", "Show on the plan", "href", "#" + ids + "plan", "class", "to-plan");
    html.close();
  }

  private void entry(String term, String text) throws IOException {
    if (!text.isEmpty()) {
      html.open("div").element("dt", term).element("dd", text).close();
    }
  }

  private void places(Finding finding) throws IOException {
    if (finding.places().size() < 2) {
      return;
    }
    Set<String> paths = new LinkedHashSet<>();
    finding.places().forEach(place -> paths.add(place.subject().path()));
    html.open("details").element("summary", Counted.of(paths.size(), "place")).open("ul");
    for (String line : PlaceNames.lines(paths)) {
      html.element("li", line);
    }
    html.close().close();
  }

  private void after(Finding finding) throws IOException {
    List<Finding> after = order.followers().after(finding);
    if (after.isEmpty()) {
      return;
    }
    html.element("p", "Brings, and goes away with it:", "class", "brings").open("ul");
    for (Finding one : after) {
      html.element("li", one.severity().word() + ": " + one.message() + " (" + one.rule() + ")");
    }
    html.close();
  }

  private void work(Finding finding) throws IOException {
    List<Section> sections = finding.chain().map(chain -> chain.sections()).orElse(List.of());
    if (sections.isEmpty()) {
      return;
    }
    html.open("details", "class", "work").element("summary", "How the number was got");
    for (Section section : sections) {
      html.element("h4", section.title());
      html.open("ol");
      for (Line line : section.lines()) {
        line(line, section);
      }
      html.close();
    }
    html.close();
  }

  private void line(Line line, Section section) throws IOException {
    Term result = line.result();
    String formula = line.formula().isEmpty() ? "" : " = " + WorkText.breakable(line.formula());
    html.open("li").text(result.meaning() + ": ");
    String value = WorkDigits.spoken(result, section.measure());
    html.element("code", result.symbol() + formula + " = " + value);
    if (!line.inputs().isEmpty()) {
      List<String> inputs = new ArrayList<>();
      for (Term input : line.inputs()) {
        inputs.add(input.symbol() + " = " + WorkDigits.text(input, section.measure()));
      }
      html.text(" with ").element("code", String.join(", ", inputs));
    }
    html.element("small", WorkText.basis(line.source(), citations));
    if (!line.note().isEmpty()) {
      html.element("small", line.note());
    }
    html.close();
  }

  private void basis(List<Basis> basis) throws IOException {
    if (basis.isEmpty()) {
      return;
    }
    html.open("p", "class", "basis").text("Basis: ");
    List<String> texts = new ArrayList<>();
    basis.forEach(one -> texts.add(citations.text(one)));
    html.text(String.join("; ", texts)).close();
  }

  private void rule(Finding finding) throws IOException {
    RulePage page = pages.get(finding.rule());
    if (page == null) {
      html.element("p", "Rule: " + finding.rule(), "class", "basis");
      return;
    }
    html.open("details", "class", "rule").element("summary", "Rule " + finding.rule());
    html.markup(PageMarkup.of(page));
    html.close();
  }
}
