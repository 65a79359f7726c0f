package clampwise.plan;

import java.util.ArrayList;
import java.util.List;

/** Breaks small text into lines that fit. */
final class Paragraph {

  private Paragraph() {}

  static List<String> lines(String text, double widthMm) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && Letters.widthMm(longer, Style.SMALL_TEXT) > widthMm) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
