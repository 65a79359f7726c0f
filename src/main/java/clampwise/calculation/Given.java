package clampwise.calculation;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The inputs of one calculation, already read and within their ranges.
 *
 * @param numbers quantities [SI] by name; inputs left out and without a default are missing here
 * @param words words by name
 */
public record Given(Map<String, List<Double>> numbers, Map<String, String> words) {

  /** A quantity [SI]. */
  public double number(String name) {
    return find(name).orElseThrow(() -> new IllegalArgumentException("no input " + name));
  }

  /** A quantity [SI], if it was given. */
  public Optional<Double> find(String name) {
    return Optional.ofNullable(numbers.get(name)).map(list -> list.get(0));
  }

  /** Several quantities [SI]. */
  public double[] list(String name) {
    return numbers.getOrDefault(name, List.of()).stream().mapToDouble(x -> x).toArray();
  }

  /** A word. */
  public String word(String name) {
    return Optional.ofNullable(words.get(name))
        .orElseThrow(() -> new IllegalArgumentException("no input " + name));
  }
}
