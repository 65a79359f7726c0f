package clampwise.calculation;

import java.util.List;
import java.util.stream.Stream;

/**
 * Samples written by hand, {@code name: key=value; key=value}, for calculations whose inputs hang
 * together too closely for random ones. Each topic has its own list.
 */
final class WrittenSamples {

  private static final List<List<String>> TOPICS =
      List.of(
          WindSamples.ALL,
          LoadSamples.ALL,
          StaticsSamples.ALL,
          ElectricalSamples.ALL,
          AccuracySamples.ALL,
          TakeoffSamples.ALL,
          DurabilitySamples.ALL);

  private WrittenSamples() {}

  static List<String> of(String calculation) {
    return TOPICS.stream()
        .flatMap(List::stream)
        .flatMap(line -> inputs(line, calculation))
        .toList();
  }

  private static Stream<String> inputs(String line, String calculation) {
    String[] parts = line.split(":", 2);
    return parts[0].equals(calculation) ? Stream.of(parts[1]) : Stream.empty();
  }
}
