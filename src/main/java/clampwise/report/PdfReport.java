package clampwise.report;

import clampwise.review.Review;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Iterator;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/**
 * Reviews as a PDF for the folder of a submittal, PDF/A-2b: the review, the plan drawings and the
 * calculation sheet, with bookmarks, page numbers and the digest of the file that was reviewed.
 */
final class PdfReport {

  /** Fonts that are embedded: family, weight and style as a page asks for them. */
  private static final List<Face> FACES =
      List.of(
          new Face("LiberationSans-Regular", "Text", 400),
          new Face("LiberationSans-Bold", "Text", 700),
          new Face("LiberationMono-Regular", "Code", 400));

  private record Face(String file, String family, int weight) {

    InputStream open() {
      return resource("/liberation/" + file + ".ttf");
    }
  }

  private PdfReport() {}

  static void write(Run run, OutputStream out) throws IOException {
    XRLog.setLoggingEnabled(false);
    System.setProperty("java.awt.headless", "true");
    StringBuilder page = new StringBuilder();
    new PdfPage(run, page).write();
    try (PdfBoxRenderer renderer = renderer(page.toString())) {
      renderer.createPDFWithoutClosing();
      PDDocument document = renderer.getPdfDocument();
      PdfFonts fonts = PdfFonts.in(document);
      plans(document, run, fonts);
      PdfFrame.finish(document, run, fonts);
      document.save(out);
    }
  }

  /** The sheets of each job stand before its calculations. */
  private static void plans(PDDocument document, Run run, PdfFonts fonts) throws IOException {
    PDDocumentOutline outline = document.getDocumentCatalog().getDocumentOutline();
    Iterator<Review> next = run.reviews().iterator();
    for (PDOutlineItem item : outline.children()) {
      if (PdfPage.SHEET.equals(item.getTitle())) {
        PdfPlans.add(document, run.sheets(next.next()), fonts, item);
      }
    }
  }

  private static PdfBoxRenderer renderer(String page) throws IOException {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePdfAConformance(PdfAConformance.PDFA_2_B);
    builder.usePdfVersion(1.7f);
    builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
    for (Face face : FACES) {
      builder.useFont(face::open, face.family, face.weight, FontStyle.NORMAL, true);
    }
    builder.useUriResolver((base, uri) -> null);
    builder.withHtmlContent(page, null);
    return builder.buildPdfRenderer();
  }

  static InputStream resource(String name) {
    InputStream in = PdfReport.class.getResourceAsStream(name);
    if (in == null) {
      throw new IllegalStateException(name + " is not packed with the program");
    }
    return in;
  }
}
