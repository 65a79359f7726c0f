package clampwise.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A page of simple Markdown as text for a terminal: headings, paragraphs, lists, tables and fenced
 * blocks.
 */
public final class MarkdownText {

  private static final String FENCE = "```";

  private static final int INDENT = 2;

  private final Sheet sheet;
  private final List<String> paragraph = new ArrayList<>();
  private boolean fenced;
  private boolean item;

  /** Writes onto a page. */
  public MarkdownText(Sheet sheet) {
    this.sheet = sheet;
  }

  /** The whole page. */
  public void write(String markdown) {
    markdown.lines().forEach(this::line);
    endParagraph();
  }

  private void line(String line) {
    if (line.startsWith(FENCE)) {
      endParagraph();
      sheet.gap();
      fenced = !fenced;
    } else if (fenced) {
      sheet.whole(INDENT + INDENT, Role.PLAIN, line);
    } else {
      prose(line.strip());
    }
  }

  private void prose(String line) {
    if (line.isEmpty()) {
      endParagraph();
    } else if (line.startsWith("#")) {
      endParagraph();
      heading(line);
    } else if (line.startsWith("|")) {
      endParagraph();
      sheet.whole(INDENT, Role.PLAIN, plain(line));
    } else {
      if (line.startsWith("- ")) {
        endParagraph();
      }
      paragraph.add(line);
    }
  }

  private void heading(String line) {
    int level = line.indexOf(' ');
    sheet.gap();
    sheet.prose(level > 2 ? INDENT : 0, Role.HEADING, plain(line.substring(Math.max(level, 0))));
  }

  private void endParagraph() {
    if (paragraph.isEmpty()) {
      return;
    }
    String text = plain(String.join(" ", paragraph));
    if (!item || !text.startsWith("- ")) {
      sheet.gap();
    }
    item = text.startsWith("- ");
    if (item) {
      sheet.marked(INDENT, "- ", Role.PLAIN, text.substring(2));
    } else {
      sheet.prose(INDENT, Role.PLAIN, text);
    }
    paragraph.clear();
  }

  /** Without the marks of code and strong text, which a terminal cannot show. */
  private static String plain(String text) {
    return text.replace("`", "").replace("**", "").strip();
  }
}
