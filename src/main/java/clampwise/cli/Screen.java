package clampwise.cli;

import java.util.Locale;
import java.util.Map;

/**
 * What the output ends up on.
 *
 * @param terminal whether a person reads along
 * @param columns width of that terminal; 0 when it is not known
 * @param progress whether a line on standard error may say how far a run got
 */
public record Screen(boolean terminal, int columns, boolean progress) {

  /** A screen without a line of progress. */
  public Screen(boolean terminal, int columns) {
    this(terminal, columns, false);
  }

  /** A file or a pipe. */
  public static final Screen NONE = new Screen(false, 0);

  /** Width when nothing says otherwise. */
  private static final int USUAL = 80;

  /** Lines longer than this tire the reader. */
  private static final int WIDEST = 100;

  private static final int NARROWEST = 40;

  /** Width of the text to print [columns]. */
  public int textWidth() {
    return columns <= 0 ? USUAL : Math.max(NARROWEST, Math.min(columns, WIDEST));
  }

  /**
   * Whether to colour when the user did not say.
   *
   * @param environment variables of the process; {@code NO_COLOR} and {@code TERM=dumb} count
   */
  public boolean coloursByItself(Map<String, String> environment) {
    return terminal
        && environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !environment.getOrDefault("TERM", "").toLowerCase(Locale.ROOT).equals("dumb");
  }
}
