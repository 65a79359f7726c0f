package clampwise.report;

import clampwise.plan.PlanSheet;
import java.io.IOException;
import java.util.List;
import java.util.Set;

/** The plan drawings of a page, with what a reader may switch and turn. */
final class HtmlPlan {

  /** Layers that a reader may hide, with what they are called. */
  private static final List<List<String>> SWITCHES =
      List.of(
          List.of("zones", "Wind zones", "zone-borders"),
          List.of("access", "Pathways and setbacks"),
          List.of("seams", "Seams and purlins"),
          List.of("bonding", "Bonding"),
          List.of("attachments", "Attachments"),
          List.of("names", "Names"),
          List.of("dimensions", "Dimensions"),
          List.of("findings", "Findings"));

  private final Html html;
  private final String ids;

  HtmlPlan(Html html, String ids) {
    this.html = html;
    this.ids = ids;
  }

  void write(List<PlanSheet> sheets) throws IOException {
    html.open("section", "class", "plans", "id", ids + "plan").element("h2", "Plan");
    if (sheets.isEmpty()) {
      html.element("p", "Nothing could be drawn.").close();
      return;
    }
    html.element(
        "p",
        "Choose a finding's mark to read it, or a module to see what concerns it. Marks: a filled"
            + " square is an error, an open diamond a warning, an open circle a note.");
    switches(sheets);
    for (PlanSheet sheet : sheets) {
      html.open("figure", "class", "sheet-box", "data-plane", sheet.plane());
      html.element("figcaption", sheet.title());
      html.open("div", "class", "zoom needs-script", "role", "group", "aria-label", "Zoom");
      button("zoom-in", "Larger");
      button("zoom-out", "Smaller");
      button("zoom-all", "Whole sheet");
      html.close();
      String label = sheet.title() + ", drawing; arrow keys move it, plus and minus zoom";
      html.open("div", "class", "canvas", "tabindex", "0", "role", "region", "aria-label", label);
      SvgPlan.embed(sheet, html.out());
      html.close().close();
    }
    html.open("div", "class", "module-box", "role", "status", "aria-live", "polite").close();
    html.close();
  }

  private void button(String name, String text) throws IOException {
    html.element("button", text, "type", "button", "class", name);
  }

  private void switches(List<PlanSheet> sheets) throws IOException {
    Set<String> drawn = new java.util.HashSet<>();
    sheets.forEach(sheet -> sheet.layers().forEach(layer -> drawn.add(layer.word())));
    html.open("fieldset", "class", "switches needs-script").element("legend", "Show");
    for (List<String> layer : SWITCHES) {
      if (drawn.contains(layer.get(0))) {
        html.open("label");
        html.markup("<input type=\"checkbox\" checked data-layer=\"" + layer.get(0) + "\">");
        html.text(" " + layer.get(1)).close();
      }
    }
    html.close();
  }
}
