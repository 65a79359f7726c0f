package clampwise.report;

import clampwise.review.Review;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.xml.transform.TransformerException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.schema.DublinCoreSchema;
import org.apache.xmpbox.schema.PDFAIdentificationSchema;
import org.apache.xmpbox.schema.XMPBasicSchema;
import org.apache.xmpbox.type.BadFieldValueException;
import org.apache.xmpbox.xml.XmpSerializer;

/**
 * What stands on every page and about the document; without a clock, so that bytes stay the same.
 */
final class PdfFrame {

  private static final float SIZE = 7.5f;
  private static final float MARGIN = 34;
  private static final float BASE = 20;

  private PdfFrame() {}

  static void finish(PDDocument document, Run run, PdfFonts fonts) throws IOException {
    String title = title(run);
    feet(document, foot(run), fonts);
    PDDocumentInformation information = new PDDocumentInformation();
    information.setTitle(title);
    information.setCreator("clampwise " + run.version());
    document.setDocumentInformation(information);
    document.getDocumentCatalog().setLanguage("en");
    document.setDocumentId(number(title + foot(run)));
    document.getDocumentCatalog().setMetadata(metadata(document, title, run));
    document.getDocument().getTrailer().removeItem(COSName.ID);
  }

  private static String title(Run run) {
    String jobs = run.reviews().isEmpty() ? "no job" : TextReport.title(run.reviews().get(0));
    return "Review of " + Harmless.of(jobs);
  }

  /** What was reviewed, by its digest, and what this is not. */
  private static String foot(Run run) {
    String digest =
        run.reviews().stream()
            .map(Review::sources)
            .filter(sources -> !sources.isEmpty())
            .map(sources -> ", file sha256:" + sources.get(0).sha256().substring(0, 16))
            .findFirst()
            .orElse("");
    return "clampwise " + run.version() + digest + " - no engineer's approval, permit or listing";
  }

  private static void feet(PDDocument document, String foot, PdfFonts fonts) throws IOException {
    int pages = document.getNumberOfPages();
    int number = 0;
    for (PDPage page : document.getPages()) {
      number++;
      String right = "page " + number + " of " + pages;
      float width = page.getMediaBox().getWidth();
      try (PDPageContentStream out =
          new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
        out.setNonStrokingColor(new Color(0x33, 0x33, 0x33));
        float start = width - MARGIN - PdfFonts.width(fonts.plain(), right, SIZE);
        put(out, fonts, MARGIN, foot);
        put(out, fonts, start, right);
      }
    }
  }

  private static void put(PDPageContentStream out, PdfFonts fonts, float x, String text)
      throws IOException {
    out.beginText();
    out.setFont(fonts.plain(), SIZE);
    out.newLineAtOffset(x, BASE);
    out.showText(PdfFonts.spelled(fonts.plain(), text));
    out.endText();
  }

  /** A number from a text, in place of the time that a library would take. */
  private static long number(String text) {
    CRC32 sum = new CRC32();
    sum.update(text.getBytes(StandardCharsets.UTF_8));
    return sum.getValue();
  }

  private static PDMetadata metadata(PDDocument document, String title, Run run)
      throws IOException {
    XMPMetadata metadata = XMPMetadata.createXMPMetadata();
    DublinCoreSchema core = metadata.createAndAddDublinCoreSchema();
    core.setTitle(title);
    core.addLanguage("en");
    XMPBasicSchema basic = metadata.createAndAddXMPBasicSchema();
    basic.setCreatorTool("clampwise " + run.version());
    PDFAIdentificationSchema archive = metadata.createAndAddPDFAIdentificationSchema();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      archive.setPart(2);
      archive.setConformance("B");
      new XmpSerializer().serialize(metadata, bytes, true);
    } catch (BadFieldValueException | TransformerException e) {
      throw new IOException(e);
    }
    PDMetadata written = new PDMetadata(document);
    written.importXMPMetadata(bytes.toByteArray());
    return written;
  }
}
