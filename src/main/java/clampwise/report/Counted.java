package clampwise.report;

/** Counts as people say them. */
final class Counted {

  private Counted() {}

  /** {@code 1 error}, {@code 3 errors}: the plural is the word with an s. */
  static String of(int count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
