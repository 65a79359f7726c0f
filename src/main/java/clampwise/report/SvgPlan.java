package clampwise.report;

import clampwise.plan.About;
import clampwise.plan.Drawn;
import clampwise.plan.Layer;
import clampwise.plan.Pen;
import clampwise.plan.PlanSheet;
import clampwise.plan.Point;
import clampwise.plan.Style;
import clampwise.review.Review;
import clampwise.units.QuantityPrint;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Plan drawings as SVG 1.1: millimetres of the sheet, a group for each layer, a class for each
 * style. Nothing is loaded from anywhere, and there is no script.
 */
final class SvgPlan {

  private static final double GAP_MM = 8;
  private static final double LINE_MM = 10;

  private final Appendable out;

  private SvgPlan(Appendable out) {
    this.out = out;
  }

  /** Writes all sheets of a run, one below the other, and below them what could not be drawn. */
  static void write(Run run, Appendable out) throws IOException {
    List<PlanSheet> sheets = new ArrayList<>();
    List<String> undrawn = new ArrayList<>();
    for (Review review : run.reviews()) {
      List<PlanSheet> own = run.sheets(review);
      sheets.addAll(own);
      if (own.isEmpty()) {
        undrawn.add(review.file());
      }
    }
    SvgPlan svg = new SvgPlan(out);
    double sheetsMm = Math.max(1, sheets.size()) * step() - GAP_MM;
    double firstMm = sheets.isEmpty() ? 3 * LINE_MM : sheetsMm + 2 * LINE_MM;
    double endMm = undrawn.isEmpty() ? 0 : firstMm + undrawn.size() * LINE_MM;
    svg.put("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    svg.open(PlanSheet.WIDTH_MM, Math.max(sheetsMm, endMm), title(run));
    svg.put("<style>\n").put(styles("")).put("</style>\n");
    svg.put("<rect class=\"sheet\" width=\"100%\" height=\"100%\"/>\n");
    svg.sheets(sheets);
    svg.undrawn(undrawn, firstMm);
    svg.put("</svg>\n");
  }

  private void sheets(List<PlanSheet> sheets) throws IOException {
    for (int i = 0; i < sheets.size(); i++) {
      put("<g transform=\"translate(0 " + mm(i * step()) + ")\">\n");
      layers(sheets.get(i));
      put("</g>\n");
    }
  }

  private void undrawn(List<String> files, double firstMm) throws IOException {
    for (int i = 0; i < files.size(); i++) {
      put("<text class=\"t-heading\" x=\"20\" y=\"" + mm(firstMm + i * LINE_MM) + "\">");
      put("Nothing could be drawn of " + Markup.of(files.get(i)) + ".</text>\n");
    }
  }

  /** Writes one sheet as an element of a page, which has the styles. */
  static void embed(PlanSheet sheet, Appendable out) throws IOException {
    SvgPlan svg = new SvgPlan(out);
    svg.open(sheet.widthMm(), sheet.heightMm(), sheet.title());
    svg.layers(sheet);
    svg.put("</svg>\n");
  }

  private static double step() {
    return PlanSheet.HEIGHT_MM + GAP_MM;
  }

  private static String title(Run run) {
    return run.reviews().isEmpty() ? "Plan" : "Plan of " + TextReport.title(run.reviews().get(0));
  }

  private void open(double widthMm, double heightMm, String title) throws IOException {
    put("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" class=\"plan\"");
    put(" width=\"" + mm(widthMm) + "mm\" height=\"" + mm(heightMm) + "mm\"");
    put(" viewBox=\"0 0 " + mm(widthMm) + " " + mm(heightMm) + "\">\n");
    put("<title>" + Markup.of(title) + "</title>\n");
  }

  private void layers(PlanSheet sheet) throws IOException {
    for (Layer layer : sheet.layers()) {
      put("<g class=\"layer-" + layer.word() + "\">\n");
      for (Drawn drawn : layer.drawn()) {
        element(drawn);
      }
      put("</g>\n");
    }
  }

  private void element(Drawn drawn) throws IOException {
    if (drawn instanceof Drawn.Lines lines) {
      put("<path" + about(lines) + " d=\"");
      for (Drawn.Run run : lines.runs()) {
        path(run);
      }
      close("path", "\"", lines.about());
    } else if (drawn instanceof Drawn.Disc disc) {
      Point centre = disc.centre();
      put("<circle" + about(disc) + " cx=\"" + mm(centre.xMm()) + "\" cy=\"" + mm(centre.yMm()));
      close("circle", "\" r=\"" + mm(disc.radiusMm()) + "\"", disc.about());
    } else if (drawn instanceof Drawn.Words words) {
      words(words);
    }
  }

  private void path(Drawn.Run run) throws IOException {
    char command = 'M';
    for (Point point : run.points()) {
      put(command + mm(point.xMm()) + " " + mm(point.yMm()));
      command = 'L';
    }
    put(run.closed() ? "Z" : "");
  }

  private void words(Drawn.Words words) throws IOException {
    String x = mm(words.at().xMm());
    String y = mm(words.at().yMm());
    put("<text" + about(words) + " x=\"" + x + "\" y=\"" + y + "\"");
    if (words.anchor() != Drawn.Anchor.START) {
      String anchor = words.anchor() == Drawn.Anchor.MIDDLE ? "middle" : "end";
      put(" text-anchor=\"" + anchor + "\"");
    }
    if (words.turnDeg() != 0) {
      put(" transform=\"rotate(" + mm(-words.turnDeg()) + " " + x + " " + y + ")\"");
    }
    put(">" + Markup.of(words.text()) + "</text>\n");
  }

  private static String about(Drawn drawn) {
    About about = drawn.about();
    String sort = drawn instanceof Drawn.Words ? "t-" : "s-";
    String kind = " class=\"" + sort + drawn.style().word() + "\"";
    return about.isSomething()
        ? kind + " data-" + about.kind() + "=\"" + Markup.of(about.name()) + "\""
        : kind;
  }

  private void close(String element, String before, About about) throws IOException {
    put(before);
    put(
        about.title().isEmpty()
            ? "/>\n"
            : "><title>" + Markup.of(about.title()) + "</title></" + element + ">\n");
  }

  /**
   * The style sheet of all drawings.
   *
   * @param within selector that each rule is kept within
   */
  static String styles(String within) {
    StringBuilder css = new StringBuilder();
    String scope = within.isEmpty() ? "" : within + " ";
    css.append(scope).append(".sheet{fill:#ffffff}\n");
    css.append(scope).append("text{font-family:sans-serif;stroke:none}\n");
    for (Style style : Style.values()) {
      css.append(scope).append(".s-").append(style.word()).append('{');
      css.append(pen(style.pen())).append("}\n");
      css.append(scope).append(".t-").append(style.word()).append('{').append(letters(style));
      css.append("}\n");
    }
    return css.toString();
  }

  private static String pen(Pen pen) {
    StringBuilder css = new StringBuilder();
    css.append("fill:").append(pen.fill().isEmpty() ? "none" : pen.fill());
    css.append(";fill-rule:evenodd");
    if (pen.line().isEmpty()) {
      return css.append(";stroke:none").toString();
    }
    css.append(";stroke:").append(pen.line()).append(";stroke-width:").append(mm(pen.widthMm()));
    if (!pen.dashMm().isEmpty()) {
      css.append(";stroke-dasharray:");
      pen.dashMm().forEach(dash -> css.append(mm(dash)).append(' '));
      css.setLength(css.length() - 1);
    }
    return css.toString();
  }

  private static String letters(Style style) {
    String weight = style.isBold() ? ";font-weight:bold" : "";
    String colour = style.pen().fill().isEmpty() ? "#111111" : style.pen().fill();
    return "fill:" + colour + ";font-size:" + mm(style.letterMm()) + "px" + weight;
  }

  private static String mm(double value) {
    return QuantityPrint.trimmed(value, 2);
  }

  private SvgPlan put(String text) throws IOException {
    out.append(text);
    return this;
  }
}
