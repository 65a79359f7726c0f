package clampwise.report;

import clampwise.plan.Drawn;
import clampwise.plan.Layer;
import clampwise.plan.Pen;
import clampwise.plan.PlanSheet;
import clampwise.plan.Point;
import clampwise.plan.Style;
import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.util.Matrix;

/** Plan drawings as pages of a PDF, to the scale that they say. */
final class PdfPlans {

  private static final float POINTS_PER_MM = 72 / 25.4f;

  /** How far a Bezier curve's handles stand off for a quarter of a circle of radius 1. */
  private static final double QUARTER = 0.5523;

  private final PDPageContentStream out;
  private final PdfFonts fonts;
  private final double heightMm;

  private PdfPlans(PDPageContentStream out, PdfFonts fonts, double heightMm) {
    this.out = out;
    this.fonts = fonts;
    this.heightMm = heightMm;
  }

  /**
   * Adds a page for each sheet, with a bookmark, in front of the page that a bookmark leads to.
   *
   * @param before the bookmark before which those of the sheets stand
   */
  static void add(PDDocument document, List<PlanSheet> sheets, PdfFonts fonts, PDOutlineItem before)
      throws IOException {
    PDPage next = before.findDestinationPage(document);
    for (PlanSheet sheet : sheets) {
      PDPage page = new PDPage(new PDRectangle(points(sheet.widthMm()), points(sheet.heightMm())));
      document.getPages().insertBefore(page, next);
      try (PDPageContentStream out = new PDPageContentStream(document, page)) {
        out.transform(Matrix.getScaleInstance(POINTS_PER_MM, POINTS_PER_MM));
        new PdfPlans(out, fonts, sheet.heightMm()).draw(sheet);
      }
      before.insertSiblingBefore(bookmark(sheet, page));
    }
  }

  private static PDOutlineItem bookmark(PlanSheet sheet, PDPage page) {
    PDPageFitDestination destination = new PDPageFitDestination();
    destination.setPage(page);
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle("Plan: " + Harmless.of(sheet.title()));
    item.setDestination(destination);
    return item;
  }

  private static float points(double lengthMm) {
    return (float) lengthMm * POINTS_PER_MM;
  }

  private void draw(PlanSheet sheet) throws IOException {
    for (Layer layer : sheet.layers()) {
      for (Drawn drawn : layer.drawn()) {
        if (drawn instanceof Drawn.Words words) {
          words(words);
        } else {
          shape(drawn);
        }
      }
    }
  }

  private void shape(Drawn drawn) throws IOException {
    Pen pen = drawn.style().pen();
    boolean filled = !pen.fill().isEmpty();
    boolean lined = !pen.line().isEmpty();
    if (!filled && !lined) {
      return;
    }
    if (filled) {
      out.setNonStrokingColor(Color.decode(pen.fill()));
    }
    if (lined) {
      out.setStrokingColor(Color.decode(pen.line()));
      out.setLineWidth((float) pen.widthMm());
      out.setLineDashPattern(dashes(pen), 0);
    }
    path(drawn);
    if (filled && lined) {
      out.fillAndStrokeEvenOdd();
    } else if (filled) {
      out.fillEvenOdd();
    } else {
      out.stroke();
    }
  }

  private static float[] dashes(Pen pen) {
    float[] dashes = new float[pen.dashMm().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = pen.dashMm().get(i).floatValue();
    }
    return dashes;
  }

  private void path(Drawn drawn) throws IOException {
    if (drawn instanceof Drawn.Lines lines) {
      for (Drawn.Run run : lines.runs()) {
        run(run);
      }
    } else if (drawn instanceof Drawn.Disc disc) {
      circle(disc.centre(), disc.radiusMm());
    }
  }

  private void run(Drawn.Run run) throws IOException {
    Point first = run.points().get(0);
    out.moveTo(x(first), y(first));
    for (Point point : run.points().subList(1, run.points().size())) {
      out.lineTo(x(point), y(point));
    }
    if (run.closed()) {
      out.closePath();
    }
  }

  private void circle(Point centre, double r) throws IOException {
    float x = x(centre);
    float y = y(centre);
    float k = (float) (QUARTER * r);
    float f = (float) r;
    out.moveTo(x + f, y);
    out.curveTo(x + f, y + k, x + k, y + f, x, y + f);
    out.curveTo(x - k, y + f, x - f, y + k, x - f, y);
    out.curveTo(x - f, y - k, x - k, y - f, x, y - f);
    out.curveTo(x + k, y - f, x + f, y - k, x + f, y);
    out.closePath();
  }

  private void words(Drawn.Words words) throws IOException {
    Style style = words.style();
    PDFont font = style.isBold() ? fonts.bold() : fonts.plain();
    float size = (float) style.letterMm();
    String text = PdfFonts.spelled(font, words.text());
    float width = PdfFonts.width(font, text, size);
    float back =
        switch (words.anchor()) {
          case START -> 0;
          case MIDDLE -> width / 2;
          case END -> width;
        };
    double turn = Math.toRadians(words.turnDeg());
    out.setNonStrokingColor(
        Color.decode(style.pen().fill().isEmpty() ? "#111111" : style.pen().fill()));
    out.beginText();
    out.setFont(font, size);
    Matrix at = Matrix.getRotateInstance(turn, x(words.at()), y(words.at()));
    at.concatenate(Matrix.getTranslateInstance(-back, 0));
    out.setTextMatrix(at);
    out.showText(text);
    out.endText();
  }

  private static float x(Point point) {
    return (float) point.xMm();
  }

  /** Pages count from below, sheets from above. */
  private float y(Point point) {
    return (float) (heightMm - point.yMm());
  }
}
