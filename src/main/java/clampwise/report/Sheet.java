package clampwise.report;

import java.util.Iterator;
import java.util.List;

/** A page of text under way: indented, wrapped, harmless lines of at most a given width. */
public final class Sheet {

  /** Columns given to a label and the blanks after it. */
  private static final int LABEL = 8;

  /** Narrowest column of prose, whatever the terminal says. */
  private static final int NARROWEST = 20;

  /** Columns by which the rest of a line of an example stands further in. */
  private static final int CONTINUED = 4;

  private final int width;
  private final Paint paint;
  private final StringBuilder text = new StringBuilder();

  /**
   * An empty page.
   *
   * @param width longest line [columns]
   */
  public Sheet(int width, Paint paint) {
    this.width = width;
    this.paint = paint;
  }

  /** An empty page of the same width and colours. */
  Sheet another() {
    return new Sheet(width, paint);
  }

  /** What another page holds. */
  void add(Sheet page) {
    text.append(page.text);
  }

  /** What comes next, and how many of it. */
  void heading(Role role, String what, int count) {
    gap();
    prose(0, role, what + " (" + count + ")");
  }

  /** A wrapped paragraph. */
  public void prose(int indent, Role role, String prose) {
    for (String line : wrapped(prose, indent)) {
      newLine(indent).append(paint.paint(role, line)).append('\n');
    }
  }

  /** A wrapped paragraph that hangs behind its mark. */
  public void marked(int indent, String mark, Role role, String prose) {
    int hanging = indent + mark.length();
    Iterator<String> lines = wrapped(prose, hanging).iterator();
    newLine(indent).append(paint.paint(role, mark + lines.next())).append('\n');
    lines.forEachRemaining(line -> newLine(hanging).append(paint.paint(role, line)).append('\n'));
  }

  /** A wrapped paragraph behind a label; nothing when the paragraph is empty. */
  public void labelled(int indent, String label, String prose) {
    if (prose.isEmpty()) {
      return;
    }
    String before = label;
    for (String line : wrapped(prose, indent + LABEL)) {
      String column = before + " ".repeat(Math.max(LABEL - before.length(), 1));
      newLine(indent).append(paint.paint(Role.FAINT, column)).append(line).append('\n');
      before = "";
    }
  }

  /** One line that is never broken, such as a position that people copy. */
  public void whole(int indent, Role role, String line) {
    newLine(indent).append(paint.paint(role, Harmless.of(line))).append('\n');
  }

  /** A line of an example: what does not fit goes on further in. */
  void example(int indent, String line) {
    String body = line.stripLeading();
    int own = indent + line.length() - body.length();
    if (own + Columns.of(body) <= width) {
      whole(own, Role.PLAIN, body);
      return;
    }
    Iterator<String> lines = wrapped(body, own + CONTINUED).iterator();
    whole(own, Role.PLAIN, lines.next());
    lines.forEachRemaining(rest -> whole(own + CONTINUED, Role.PLAIN, rest));
  }

  /** A table as aligned columns. */
  void table(int indent, TextTable table) {
    table.lines(Math.max(width - indent, NARROWEST)).forEach(l -> whole(indent, Role.PLAIN, l));
  }

  /** An empty line, unless there is one or the page is empty. */
  public void gap() {
    int end = text.length();
    if (end > 1 && text.charAt(end - 2) != '\n') {
      text.append('\n');
    }
  }

  private StringBuilder newLine(int indent) {
    return text.append(" ".repeat(indent));
  }

  private List<String> wrapped(String prose, int indent) {
    return Wrap.lines(Harmless.of(prose), Math.max(width - indent, NARROWEST));
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
