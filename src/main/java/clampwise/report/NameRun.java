package clampwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Names that differ in their last number, such as {@code R2C1} to {@code R2C9}; rows with the same
 * columns together.
 *
 * @param before what stands before the number of the row, such as {@code R}
 * @param between what stands before the last number, such as {@code C}; empty without a row
 * @param firstRow number of the first row; 0 without one
 */
record NameRun(String before, String between, int firstRow, int lastRow, TreeSet<Integer> last) {

  /** A longer number is no number to count with. */
  private static final int MOST_DIGITS = 6;

  /** Two neighbours are as quickly read by name as in one. */
  private static final int SHORTEST_RANGE = 3;

  /** The names that begin alike, as {@code R2C}, each with one of the numbers behind it. */
  static NameRun of(String stem, TreeSet<Integer> last) {
    int end = stem.length();
    while (end > 0 && !isDigit(stem.charAt(end - 1))) {
      end--;
    }
    int start = startOfNumber(stem, end);
    boolean row = start < end && start > 0 && end < stem.length();
    return row
        ? new NameRun(
            stem.substring(0, start),
            stem.substring(end),
            Integer.parseInt(stem.substring(start, end)),
            Integer.parseInt(stem.substring(start, end)),
            last)
        : new NameRun(stem, "", 0, 0, last);
  }

  /** Where the number begins that ends there; the end if there is none that counts. */
  static int startOfNumber(String text, int end) {
    int start = end;
    while (start > 0 && isDigit(text.charAt(start - 1))) {
      start--;
    }
    boolean counts = end - start <= MOST_DIGITS && start < end && text.charAt(start) != '0';
    return counts ? start : end;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Whether another run goes on with the next row and the same columns. */
  boolean goesOnWith(NameRun next) {
    return firstRow > 0
        && next.firstRow == lastRow + 1
        && next.before.equals(before)
        && next.between.equals(between)
        && next.last.equals(last);
  }

  NameRun with(NameRun next) {
    return new NameRun(before, between, firstRow, next.lastRow, last);
  }

  /**
   * A name, or the first and the last of several.
   *
   * @param count how many names it stands for
   */
  record Word(String text, int count) {}

  /** The names in few words: {@code R2C1}, {@code R2C4-R2C9}. */
  List<Word> words() {
    List<Word> words = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>(last);
    int from = 0;
    for (int i = 1; i <= numbers.size(); i++) {
      boolean ends = i == numbers.size() || numbers.get(i) != numbers.get(i - 1) + 1;
      if (ends) {
        add(numbers.subList(from, i), words);
        from = i;
      }
    }
    return words;
  }

  private void add(List<Integer> numbers, List<Word> words) {
    int first = numbers.get(0);
    int end = numbers.get(numbers.size() - 1);
    boolean range = numbers.size() >= SHORTEST_RANGE && before.indexOf('-') < 0;
    if (lastRow > firstRow) {
      String block = name(firstRow, first) + "-" + name(lastRow, end);
      words.add(new Word(block, numbers.size() * (lastRow - firstRow + 1)));
    } else if (range) {
      words.add(new Word(name(firstRow, first) + "-" + name(firstRow, end), numbers.size()));
    } else {
      numbers.forEach(number -> words.add(new Word(name(firstRow, number), 1)));
    }
  }

  private String name(int row, int number) {
    return before + (row > 0 ? row + between : "") + number;
  }
}
