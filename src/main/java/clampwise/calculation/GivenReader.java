package clampwise.calculation;

import clampwise.source.Nearest;
import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code key=value} words for a calculation and says everything that is wrong with them. */
public final class GivenReader {

  private final Calculation calculation;
  private final List<String> problems = new ArrayList<>();
  private final UnitVotes votes = new UnitVotes();
  private final Map<String, List<Double>> numbers = new LinkedHashMap<>();
  private final Map<String, String> words = new LinkedHashMap<>();
  private final List<Reading.Text> texts = new ArrayList<>();

  private GivenReader(Calculation calculation) {
    this.calculation = calculation;
  }

  /** Reads the words, in any order. */
  public static Reading read(Calculation calculation, List<String> words) {
    return new GivenReader(calculation).read(words);
  }

  private Reading read(List<String> written) {
    Map<String, String> values = values(written);
    calculation.inputs().forEach(input -> read(input, values));
    Optional<Given> given =
        problems.isEmpty() ? Optional.of(new Given(numbers, words)) : Optional.empty();
    return new Reading(given, votes.measure(), texts, problems);
  }

  private Map<String, String> values(List<String> written) {
    Map<String, String> values = new LinkedHashMap<>();
    for (String word : written) {
      int equals = word.indexOf('=');
      if (equals < 1) {
        problems.add("\"" + word + "\" is no input; write key=value, such as " + example());
        continue;
      }
      String key = word.substring(0, equals).strip();
      boolean first = values.putIfAbsent(key, word.substring(equals + 1).strip()) == null;
      if (first) {
        checkKnown(key);
      } else {
        problems.add(key + " is given twice");
      }
    }
    return values;
  }

  private String example() {
    return calculation.inputs().stream()
        .findFirst()
        .map(input -> input.name() + "=...")
        .orElse("key=...");
  }

  private void checkKnown(String key) {
    Collection<String> keys = calculation.inputs().stream().map(Input::name).toList();
    if (!keys.contains(key)) {
      String nearest = Nearest.to(key, keys).map(near -> "; the nearest is " + near).orElse("");
      problems.add("there is no input " + key + nearest);
    }
  }

  private void read(Input input, Map<String, String> values) {
    Optional<String> written = Optional.ofNullable(values.get(input.name()));
    Optional<String> text =
        written.or(input::unset).filter(t -> written.isPresent() || !t.isEmpty());
    if (text.isPresent()) {
      texts.add(new Reading.Text(input, text.get(), written.isPresent()));
      value(input, text.get(), written.isPresent());
    } else if (input.unset().isEmpty()) {
      problems.add(
          input.name()
              + " is missing: "
              + input.meaning()
              + "; expected "
              + InputText.expected(input));
    }
  }

  private void value(Input input, String text, boolean written) {
    if (input.kind() instanceof Input.Word word) {
      word(input, word, text);
    } else if (input.kind() instanceof Input.Quantity one) {
      Range range = new Range(one.dimension(), one.least(), one.most());
      number(input, range, text, written).ifPresent(si -> numbers.put(input.name(), List.of(si)));
    } else if (input.kind() instanceof Input.Quantities many) {
      numbers(input, new Range(many.dimension(), many.least(), many.most()), text);
    }
  }

  private void word(Input input, Input.Word word, String text) {
    if (word.words().contains(text)) {
      words.put(input.name(), text);
      return;
    }
    String nearest =
        Nearest.to(text, word.words()).map(near -> "; the nearest is " + near).orElse("");
    problem(input, "\"" + text + "\"", nearest);
  }

  private void numbers(Input input, Range range, String text) {
    List<Double> all = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      number(input, range, part, true).ifPresent(all::add);
    }
    numbers.put(input.name(), all);
  }

  private record Range(Dimension dimension, double least, double most) {

    boolean holds(double si) {
      double room = 1e-12 * Math.max(Math.abs(least), Math.abs(most));
      double rounding = Double.isFinite(room) ? Math.min(room, 1e-9) : 1e-9;
      return si >= least - rounding && si <= most + rounding;
    }
  }

  private Optional<Double> number(Input input, Range range, String text, boolean written) {
    Parsed parsed = QuantityText.parse(text, range.dimension, Optional.empty());
    if (!(parsed instanceof Parsed.Value value)) {
      Parsed.Fault fault = (Parsed.Fault) parsed;
      problem(input, fault.found(), hint(fault.expected()));
      return Optional.empty();
    }
    if (written) {
      votes.add(value.unit());
    }
    if (!range.holds(value.si())) {
      problem(input, "\"" + text.strip() + "\", which is out of range", "");
      return Optional.empty();
    }
    return Optional.of(value.si());
  }

  /** What the reader of quantities adds to the example: the nearest unit, how to write decimals. */
  private static String hint(String expected) {
    int hint = expected.indexOf("; ");
    return hint < 0 ? "" : expected.substring(hint);
  }

  private void problem(Input input, String found, String hint) {
    problems.add(input.name() + " is " + found + "; expected " + InputText.expected(input) + hint);
  }
}
