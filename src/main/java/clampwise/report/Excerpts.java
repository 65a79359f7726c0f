package clampwise.report;

import clampwise.source.SourceText;
import clampwise.source.Span;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Lines of the files that were reviewed, around the place where something was written. */
final class Excerpts {

  private static final int AROUND = 2;
  private static final int WIDEST = 160;

  private final Map<String, List<String>> linesOf = new HashMap<>();

  Excerpts(List<SourceText> sources) {
    sources.forEach(source -> linesOf.put(source.file(), source.lines()));
  }

  /** Writes the lines around a place; only its name where the file is not at hand. */
  void write(Span at, Html html) throws IOException {
    html.element("p", at.toString(), "class", "place");
    List<String> lines = linesOf.getOrDefault(at.file(), List.of());
    int line = at.start().line();
    if (line > lines.size()) {
      return;
    }
    String label = "Lines of " + at.file() + " around line " + line;
    html.open("pre", "class", "excerpt", "tabindex", "0", "role", "region", "aria-label", label);
    for (int i = Math.max(1, line - AROUND); i <= Math.min(lines.size(), line + AROUND); i++) {
      String element = i == line ? "mark" : "span";
      String number = String.format(java.util.Locale.ROOT, "%5d  ", i);
      html.markup("<" + element + ">").text(number + cut(lines.get(i - 1)));
      html.markup("</" + element + ">");
    }
    html.close();
  }

  private static String cut(String line) {
    return line.length() <= WIDEST
        ? line
        : line.substring(0, line.offsetByCodePoints(WIDEST - 1, 0)) + "…";
  }
}
