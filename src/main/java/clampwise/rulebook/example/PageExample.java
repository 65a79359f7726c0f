package clampwise.rulebook.example;

import java.util.List;
import java.util.SortedSet;

/**
 * One example of a rule page.
 *
 * @param page name of the page
 * @param title its heading
 * @param base name of the base job it is laid over
 * @param yaml its text, moved down by empty lines so that its lines are those of the page
 * @param marked lines of the page where a finding must point
 */
public record PageExample(
    String page, String title, String base, String yaml, SortedSet<Integer> marked) {

  /** How titles of examples begin. */
  public static final List<String> KINDS = List.of("Fires:", "Silent:", "At the limit:");

  /** Whether it is an example of one of these kinds. */
  public boolean isOf(String kind) {
    return title.startsWith(kind);
  }
}
