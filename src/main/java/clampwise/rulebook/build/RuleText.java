package clampwise.rulebook.build;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of one rule.
 *
 * @param file where it stands, relative to the rules folder, with forward slashes
 * @param text its content
 */
public record RuleText(String file, String text) {
  private static final String ENDING = ".drl";

  /** Name of the file without folder and ending, which is the id of the rule. */
  public String id() {
    return file.substring(file.lastIndexOf('/') + 1, file.length() - ENDING.length());
  }

  /** Folder of the file. */
  public String topic() {
    return file.contains("/") ? file.substring(0, file.indexOf('/')) : "";
  }

  /** The text of one of its annotations, empty if it is not there. */
  public String note(String name) {
    Matcher note = Pattern.compile("@" + name + "\\(\"([^\"]*)\"\\)").matcher(text);
    return note.find() ? note.group(1) : "";
  }
}
