package clampwise.source;

import java.util.Optional;

/**
 * Something in the input that cannot be read as meant.
 *
 * @param at the offending text
 * @param found what stands there, in plain words
 * @param expected what would be right
 * @param nearest the known key or name that is nearest to what was written
 */
public record Problem(Span at, String found, String expected, Optional<String> nearest)
    implements Comparable<Problem> {

  public static Problem of(Span at, String found, String expected) {
    return new Problem(at, found, expected, Optional.empty());
  }

  @Override
  public int compareTo(Problem other) {
    int byPlace = at.compareTo(other.at);
    return byPlace != 0 ? byPlace : found.compareTo(other.found);
  }
}
