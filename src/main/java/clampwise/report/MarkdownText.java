package clampwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A page of simple Markdown as text for a terminal: headings, paragraphs, lists, tables and fenced
 * blocks.
 */
public final class MarkdownText {

  private static final String FENCE = "```";

  private static final int INDENT = 2;

  private static final Pattern LINK = Pattern.compile("\\[([^\\]]+)\\]\\([^)]*\\)");

  /** A star that stands in a formula has a blank or a letter before it. */
  private static final Pattern EMPHASIS =
      Pattern.compile("(?<![\\w*-])\\*(\\p{L}[^*]*\\p{L})\\*(?!\\w)");

  private static final Pattern PARTED = Pattern.compile("\\p{L}-$");

  private final Sheet sheet;
  private TextTable table = new TextTable();
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
    endTable();
  }

  private void line(String line) {
    if (!line.startsWith("|")) {
      endTable();
    }
    if (line.startsWith(FENCE)) {
      endParagraph();
      sheet.gap();
      fenced = !fenced;
    } else if (fenced) {
      sheet.example(INDENT + INDENT, line);
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
      row(line);
    } else {
      if (line.startsWith("- ")) {
        endParagraph();
      }
      paragraph.add(line);
    }
  }

  private void row(String line) {
    if (line.matches("[|: -]+")) {
      return;
    }
    List<String> cells = new ArrayList<>();
    String row = line.substring(1, line.length() - (line.endsWith("|") ? 1 : 0));
    for (String cell : row.split("(?<!\\\\)\\|", -1)) {
      cells.add(plain(cell.replace("\\|", "|")));
    }
    table.add(cells);
  }

  private void endTable() {
    if (!table.isEmpty()) {
      sheet.gap();
      sheet.table(INDENT, table);
      table = new TextTable();
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
    String text = plain(joined());
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

  /** The lines as one; a word that was parted at its hyphen is one word again. */
  private String joined() {
    StringBuilder text = new StringBuilder();
    for (String line : paragraph) {
      boolean parted = PARTED.matcher(text).find() && !line.matches("(and|or|to) .*");
      text.append(text.length() == 0 || parted ? "" : " ").append(line);
    }
    return text.toString();
  }

  /** Without the marks of code, strong text and links, which a terminal cannot show. */
  private static String plain(String text) {
    String words = LINK.matcher(text).replaceAll("$1").replace("`", "").replace("**", "");
    return EMPHASIS.matcher(words).replaceAll("$1").strip();
  }
}
