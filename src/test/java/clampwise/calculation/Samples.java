package clampwise.calculation;

import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Inputs to try a calculation with: those written for it in {@link WrittenSamples}, and random ones
 * of usual size within the ranges of its inputs, the same in every run.
 */
final class Samples {

  private static final int RANDOM = 25;

  private final Calculation calculation;

  Samples(Calculation calculation) {
    this.calculation = calculation;
  }

  List<Given> all() {
    Stream<Given> random =
        IntStream.range(0, RANDOM)
            .mapToObj(i -> random(new Random(calculation.name().hashCode() + i)));
    return Stream.concat(written().stream(), random).toList();
  }

  /** The samples that were written for the calculation. */
  List<Given> written() {
    return WrittenSamples.of(calculation.name()).stream().map(this::read).toList();
  }

  /** Reads {@code key=value; key=value} as the command does. */
  private Given read(String text) {
    Reading reading = GivenReader.read(calculation, List.of(text.split(";")));
    return reading
        .given()
        .orElseThrow(() -> new AssertionError(calculation.name() + ": " + reading.problems()));
  }

  private Given random(Random dice) {
    Builder builder = new Builder();
    for (Input input : calculation.inputs()) {
      if (input.unset().isPresent() && dice.nextBoolean()) {
        builder.put(input, input.unset().get());
      } else {
        builder.putRandom(input, dice);
      }
    }
    return builder.given();
  }

  private static final class Builder {

    private final Map<String, List<Double>> numbers = new LinkedHashMap<>();
    private final Map<String, String> words = new LinkedHashMap<>();

    Given given() {
      return new Given(numbers, words);
    }

    void put(Input input, String text) {
      if (input.kind() instanceof Input.Word) {
        words.put(input.name(), text);
      } else if (!text.isEmpty()) {
        numbers.put(
            input.name(),
            Stream.of(text.split(",")).map(one -> si(one.trim(), dimension(input))).toList());
      }
    }

    void putRandom(Input input, Random dice) {
      if (input.kind() instanceof Input.Word word) {
        words.put(input.name(), word.words().get(dice.nextInt(word.words().size())));
      } else if (input.kind() instanceof Input.Quantity one) {
        numbers.put(input.name(), List.of(usual(one.dimension(), one.least(), one.most(), dice)));
      } else if (input.kind() instanceof Input.Quantities some) {
        int size = 2 + dice.nextInt(4);
        numbers.put(
            input.name(),
            Stream.generate(() -> usual(some.dimension(), some.least(), some.most(), dice))
                .limit(size)
                .toList());
      }
    }

    private static double usual(Dimension dimension, double least, double most, Random dice) {
      double[] range = usual(dimension);
      double from = Math.max(least, range[0]);
      double to = Math.min(most, range[1]);
      boolean apart = from > to;
      return apart ? (least > range[1] ? least : most) : from + (to - from) * dice.nextDouble();
    }

    private static double[] usual(Dimension dimension) {
      return switch (dimension) {
        case LENGTH -> new double[] {0.05, 18};
        case ANGLE -> new double[] {0, 0.7};
        case AREA -> new double[] {0.3, 60};
        case SPEED -> new double[] {20, 80};
        case FORCE -> new double[] {50, 5000};
        case PRESSURE -> new double[] {100, 4000};
        case LINE_LOAD -> new double[] {50, 3000};
        case UNIT_WEIGHT -> new double[] {1000, 5000};
        case TEMPERATURE -> new double[] {-30, 80};
        default -> new double[] {0.1, 20};
      };
    }

    private static Dimension dimension(Input input) {
      return input.kind() instanceof Input.Quantity one
          ? one.dimension()
          : ((Input.Quantities) input.kind()).dimension();
    }

    private static double si(String text, Dimension dimension) {
      Parsed parsed = QuantityText.parse(text, dimension, Optional.empty());
      if (parsed instanceof Parsed.Value value) {
        return value.si();
      }
      throw new AssertionError("unreadable sample: " + text);
    }
  }
}
