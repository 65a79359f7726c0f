package clampwise.report;

import java.util.ArrayList;
import java.util.List;

/** Breaks prose into lines, keeping a number together with its unit. */
public final class Wrap {

  /** Longest word that clings to a number before it: a unit or a fraction, not a trade word. */
  private static final int LONGEST_UNIT = 5;

  private final int width;
  private final List<String> lines = new ArrayList<>();
  private final StringBuilder line = new StringBuilder();
  private int columns;

  private Wrap(int width) {
    this.width = Math.max(width, 1);
  }

  /**
   * The lines of a text.
   *
   * @param text one paragraph
   * @param width longest line [columns]
   * @return at least one line; a word longer than a line is broken
   */
  public static List<String> lines(String text, int width) {
    Wrap wrap = new Wrap(width);
    groups(text).forEach(wrap::add);
    wrap.endLine();
    return wrap.lines;
  }

  private void add(String group) {
    int wide = Columns.of(group);
    if (line.length() > 0 && columns + 1 + wide > width) {
      endLine();
    }
    if (line.length() > 0) {
      line.append(' ');
      columns++;
    }
    if (wide <= width) {
      line.append(group);
      columns += wide;
    } else {
      addBroken(group);
    }
  }

  private void addBroken(String group) {
    for (int code : group.codePoints().toArray()) {
      if (columns + Columns.of(code) > width) {
        endLine();
      }
      line.appendCodePoint(code);
      columns += Columns.of(code);
    }
  }

  private void endLine() {
    lines.add(line.toString());
    line.setLength(0);
    columns = 0;
  }

  private static List<String> groups(String text) {
    List<String> groups = new ArrayList<>();
    String before = "";
    for (String word : words(text)) {
      if (clings(before, word)) {
        groups.add(groups.remove(groups.size() - 1) + " " + word);
      } else {
        groups.add(word);
      }
      before = word;
    }
    return groups;
  }

  private static boolean clings(String before, String word) {
    return isNumber(before) && letters(word) <= LONGEST_UNIT
        || before.equals("ft") && isNumber(word);
  }

  /** How long a word is without brackets and points behind it. */
  private static int letters(String word) {
    int end = word.length();
    while (end > 0 && "),.;:".indexOf(word.charAt(end - 1)) >= 0) {
      end--;
    }
    return end;
  }

  private static boolean isNumber(String word) {
    return !word.isEmpty()
        && Character.isDigit(word.charAt(word.length() - 1))
        && (Character.isDigit(word.charAt(0)) || word.charAt(0) == '-');
  }

  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    int start = 0;
    for (int end = text.indexOf(' '); end >= 0; end = text.indexOf(' ', start)) {
      addWord(words, text.substring(start, end));
      start = end + 1;
    }
    addWord(words, text.substring(start));
    return words;
  }

  private static void addWord(List<String> words, String word) {
    if (!word.isEmpty()) {
      words.add(word);
    }
  }
}
