package clampwise.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Parts that would fit, or what keeps every part from fitting.
 *
 * @param names names of the parts, best first
 * @param obstacle the property that no part meets, if none fits
 */
public record Fits(List<String> names, Optional<String> obstacle) {

  public Fits {
    names = List.copyOf(names);
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
