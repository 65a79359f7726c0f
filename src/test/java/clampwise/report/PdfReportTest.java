package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.review.Review;
import clampwise.review.Reviewer;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** The PDF, held to ISO 19005-2 (PDF/A-2b) by a validator that this project did not write. */
class PdfReportTest {

  private static Review junior;
  private static byte[] pdf;

  @BeforeAll
  static void write() {
    junior = new Reviewer().review(Path.of("examples/barn-junior/job.yaml"));
    pdf = written(junior);
  }

  static byte[] written(Review... reviews) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ReportKind.PDF.write(new Run(List.of(reviews), "0"), out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<String> faults(byte[] pdf) throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    try (PDFAParser parser =
            Foundries.defaultInstance()
                .createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFA_2_B);
        PDFAValidator validator =
            Foundries.defaultInstance().createValidator(PDFAFlavour.PDFA_2_B, false)) {
      ValidationResult result = validator.validate(parser);
      List<String> faults = new ArrayList<>();
      result.getTestAssertions().forEach(fault -> faults.add(fault.getMessage()));
      return result.isCompliant() ? List.of() : faults;
    }
  }

  @Test
  void itIsFitForArchives() throws Exception {
    assertThat(faults(pdf)).isEmpty();
  }

  @Test
  void aReviewWithoutALayoutIsFitForArchivesToo() throws Exception {
    assertThat(faults(written(SampleReview.full()))).isEmpty();
  }

  @Test
  void namesThatMeanHarmAreOnlyWords() throws Exception {
    byte[] hostile = written(Hostile.review());
    assertThat(faults(hostile)).isEmpty();
    assertThat(text(hostile)).contains("</td><script>").contains("\\u{202e}");
  }

  static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void itSaysWhatItIsAndWhatWasReviewed() throws IOException {
    String text = text(pdf);
    assertThat(text)
        .contains("Hay barn, south slope", "Fix first", "not an engineer's approval")
        .contains(junior.sources().get(0).sha256())
        .contains("Remarks of the person who reads this, which are no approval either")
        .contains("page 1 of ", "Plane south", "Calculation sheet");
    junior.findings().stream()
        .filter(finding -> finding.leads())
        .forEach(finding -> assertThat(text).contains(finding.rule()));
  }

  @Test
  void partsAreFoundByBookmarks() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<String> titles = new ArrayList<>();
      for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
        titles.add(item.getTitle());
        assertThat(item.findDestinationPage(document)).isNotNull();
      }
      assertThat(titles)
          .containsExactly(
              "Hay barn, south slope",
              "Findings",
              "Not checked",
              "Cautions and remarks",
              "Plan: Plane south of Hay barn, south slope",
              "Calculation sheet");
    }
  }

  @Test
  void everyFontIsEmbedded() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
        }
      }
    }
  }

  @Test
  void theSameReviewGivesTheSameBytes() {
    assertThat(written(junior)).isEqualTo(pdf);
  }
}
