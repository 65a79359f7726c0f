package clampwise.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Parts that would fit, or what keeps every part from fitting.
 *
 * @param names names of the parts, best first
 * @param obstacle the property that no part meets, if none fits
 */
public record Fits(List<String> names, Optional<String> obstacle) {

  private static final int MOST_NAMES = 3;

  public Fits {
    names = List.copyOf(names);
  }

  /** The best parts for a remedy, such as {@code A or B}; empty if none fits. */
  public Optional<String> best() {
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(names.stream().limit(MOST_NAMES).collect(Collectors.joining(" or ")));
  }

  /**
   * What a part has to meet.
   *
   * @param property its name in plain words, such as {@code a frame height of 46 mm}
   */
  record Need<T>(String property, Predicate<T> met) {}

  /** The parts that meet every need; the first need that leaves none is the obstacle. */
  static <T> Sieved<T> sieve(List<T> parts, List<Need<T>> needs) {
    List<T> left = new ArrayList<>(parts);
    for (Need<T> need : needs) {
      left.removeIf(need.met().negate());
      if (left.isEmpty()) {
        return new Sieved<>(List.of(), Optional.of(need.property()));
      }
    }
    return new Sieved<>(left, Optional.empty());
  }

  /** What is left of the parts, or why nothing is. */
  record Sieved<T>(List<T> left, Optional<String> obstacle) {}
}
