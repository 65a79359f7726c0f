package clampwise.catalogue;

import clampwise.job.Named;
import clampwise.job.Named.Item;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Parts that would fit, or what keeps every part from fitting.
 *
 * @param names names of the parts, best first
 * @param obstacle the property that no part meets, if none fits
 */
public record Fits(List<String> names, Optional<String> obstacle) {

  /** Where nothing is known to choose from. */
  public static final Fits NONE = new Fits(List.of(), Optional.empty());

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
   * What to use, for a remedy: the best parts, or something else and why no known part fits.
   *
   * @param instead what else would do, such as {@code another mid clamp}
   */
  public String told(String instead) {
    String why = obstacle.map(property -> ": the obstacle is " + property).orElse("");
    return best().orElse(instead + " (none that is known fits" + why + ")");
  }

  /**
   * The parts of a shelf that meet every need.
   *
   * @param last what comes last: the larger, the later
   */
  public static <T> Fits of(Named<T> shelf, List<Need<T>> needs, ToDoubleFunction<T> last) {
    Sieved<Item<T>> sieved =
        sieve(List.copyOf(shelf.all()), needs.stream().map(Need::ofItem).toList());
    List<String> names =
        sieved.left().stream()
            .sorted(Comparator.comparingDouble(item -> last.applyAsDouble(item.value())))
            .map(item -> item.name().value())
            .toList();
    return new Fits(names, sieved.obstacle());
  }

  /** Only those that are on a list; what the list is comes after the other obstacles. */
  public Fits among(Collection<String> listed, String list) {
    List<String> left = names.stream().filter(listed::contains).toList();
    return new Fits(left, left.isEmpty() && !names.isEmpty() ? Optional.of(list) : obstacle);
  }

  /** The same without a part that is known not to do. */
  public Fits without(String part) {
    return new Fits(names.stream().filter(name -> !name.equals(part)).toList(), obstacle);
  }

  /**
   * What a part has to meet.
   *
   * @param property its name in plain words, such as {@code the frame height, 46 mm}
   */
  public record Need<T>(String property, Predicate<T> met) {

    Need<Item<T>> ofItem() {
      return new Need<>(property, item -> met.test(item.value()));
    }
  }

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
