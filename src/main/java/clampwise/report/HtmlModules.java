package clampwise.report;

import clampwise.facts.Fact;
import clampwise.facts.loads.ModuleUse;
import clampwise.finding.Finding;
import clampwise.finding.FindingOrder;
import clampwise.finding.Place;
import clampwise.finding.Subject;
import clampwise.review.Review;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Modules with the share of their strength that is used and the findings that name them. */
final class HtmlModules {

  private static final int MOST = 500;

  private final Html html;
  private final Review review;
  private final FindingOrder order;
  private final String ids;
  private final Map<String, Row> rows = new TreeMap<>();

  /** What is known of one module. */
  private record Row(String module, String type, String zone, double share, TreeSet<Integer> in) {}

  HtmlModules(Html html, Review review, FindingOrder order, String ids) {
    this.html = html;
    this.review = review;
    this.order = order;
    this.ids = ids;
  }

  void write() throws IOException {
    collect();
    if (rows.isEmpty()) {
      return;
    }
    List<Row> sorted = new ArrayList<>(rows.values());
    sorted.sort(
        Comparator.comparing((Row row) -> row.in.isEmpty())
            .thenComparing(Comparator.comparingDouble(Row::share).reversed()));
    html.open("section", "class", "modules").element("h2", "Modules");
    html.open("details").element("summary", "Use of the design rating and findings, by module");
    table(sorted.subList(0, Math.min(MOST, sorted.size())));
    if (sorted.size() > MOST) {
      html.element("p", "and " + (sorted.size() - MOST) + " modules with less to say");
    }
    html.close().close();
  }

  private void table(List<Row> shown) throws IOException {
    html.open("table").open("thead").open("tr");
    for (String head : List.of("Module", "Type", "Wind zone", "Used", "Findings")) {
      html.element("th", head, "scope", "col");
    }
    html.close().close().open("tbody");
    for (Row row : shown) {
      html.open("tr", "data-module", row.module);
      html.element("th", row.module, "scope", "row").element("td", row.type);
      html.element("td", row.zone);
      html.element("td", row.share < 0 ? "not known" : Math.round(100 * row.share) + " %");
      html.open("td");
      for (int number : row.in) {
        html.element("a", Integer.toString(number), "href", "#" + ids + "finding-" + number);
      }
      html.close().close();
    }
    html.close().close();
  }

  private void collect() {
    review.facts().ifPresent(facts -> facts.facts().forEach(this::use));
    for (Finding finding : review.findings()) {
      order.number(finding).ifPresent(number -> named(finding, number));
    }
  }

  private void use(Fact fact) {
    if (fact instanceof ModuleUse use) {
      Row row = new Row(use.module(), use.type(), use.zone(), share(use), new TreeSet<>());
      rows.merge(use.module(), row, (one, other) -> other.share > one.share ? other : one);
    }
  }

  private static double share(ModuleUse use) {
    return use.demandPa() / use.ratedPa();
  }

  /** Adds a finding to the modules that its places name. */
  private void named(Finding finding, int number) {
    for (Place place : finding.places()) {
      String field = "";
      for (String part : place.subject().path().split(Subject.SEPARATOR, -1)) {
        field = part.startsWith("fields.") ? part.substring("fields.".length()) : field;
        if (part.startsWith("module R")) {
          String name = field + "." + part.substring("module ".length());
          rows.computeIfAbsent(name, key -> new Row(key, "", "", -1, new TreeSet<>()))
              .in
              .add(number);
        }
      }
    }
  }
}
