package clampwise.report;

import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The fonts of drawings and page frames. */
record PdfFonts(PDFont plain, PDFont bold) {

  static PdfFonts in(PDDocument document) throws IOException {
    return new PdfFonts(
        load(document, "LiberationSans-Regular"), load(document, "LiberationSans-Bold"));
  }

  private static PDFont load(PDDocument document, String name) throws IOException {
    try (InputStream in = PdfReport.resource("/liberation/" + name + ".ttf")) {
      return PDType0Font.load(document, in, true);
    }
  }

  /** The text with every letter that a font does not have spelled out. */
  static String spelled(PDFont font, String text) {
    StringBuilder out = new StringBuilder();
    Harmless.of(text)
        .codePoints()
        .forEach(
            code -> {
              if (has(font, code)) {
                out.appendCodePoint(code);
              } else {
                out.append("\\u{").append(Integer.toHexString(code)).append('}');
              }
            });
    return out.toString();
  }

  private static boolean has(PDFont font, int code) {
    try {
      font.encode(Character.toString(code));
      return true;
    } catch (IOException | IllegalArgumentException | UnsupportedOperationException e) {
      return false;
    }
  }

  /** Width of a text at a size [same unit as the size]. */
  static float width(PDFont font, String text, float size) throws IOException {
    return font.getStringWidth(text) / 1000 * size;
  }
}
