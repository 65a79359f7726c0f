package clampwise.rulebook;

import clampwise.facts.Fact;
import clampwise.units.Dimension;
import clampwise.units.Unit;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes the reference of all facts from their sources and from the rules that judge them. */
record FactDocs(Map<String, List<Class<?>>> byTopic, List<RuleCard> cards) {
  static final String INDEX = "facts.md";
  private static final Pattern UNIT = Pattern.compile("\\s*\\[([^\\]]+)]");
  private static final List<String> PLACED = List.of("subject", "cause", "at", "shown", "drawnAt");
  private static final List<String> KEPT = List.of("units", "chain", "limitFrom");

  static FactDocs shipped() {
    Map<String, List<Class<?>>> byTopic = new TreeMap<>();
    for (String name : RuleIndex.lines(RuleIndex.FACTS)) {
      Class<?> fact = loaded(name);
      String room = fact.getPackageName();
      byTopic
          .computeIfAbsent(room.substring(room.lastIndexOf('.') + 1), topic -> new ArrayList<>())
          .add(fact);
    }
    return new FactDocs(byTopic, Rulebook.builtIn().cards());
  }

  private static Class<?> loaded(String name) {
    try {
      return Class.forName(name);
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
  }

  /** Every page by its name below the folder of the documentation. */
  Map<String, String> files() {
    Map<String, String> files = new TreeMap<>();
    files.put(INDEX, index());
    byTopic.forEach((topic, facts) -> files.put("facts/" + topic + ".md", page(topic, facts)));
    return files;
  }

  private String index() {
    StringBuilder rows = new StringBuilder();
    byTopic.forEach(
        (topic, facts) ->
            facts.forEach(
                fact ->
                    rows.append(
                        "| %s | [%s](facts/%s.md#%s) | %s |\n"
                            .formatted(
                                topic,
                                fact.getSimpleName(),
                                topic,
                                fact.getSimpleName().toLowerCase(java.util.Locale.ROOT),
                                FactSource.of(fact).says()))));
    return """
        # All facts

        A rule judges facts: one answered question each, with the measured value and its limit side by side. This list and the pages it leads to are written from the sources of the
        facts; [rules of your own](own-rules.md) judge the same ones as the rules that ship. Where the question cannot be answered for want of an input, there is no fact and the review
        says *not checked*.

        ## In a condition

        | kind | how it is compared |
        |---|---|
        | number with a unit | in SI, as its table says: `gapM < 0.015` is 15 mm in metres, `tiltRad > 0.087` is 5 degrees in radians, `loadPa` in pascal, `forceN` in newton |
        | whole number, share | as it is: `clamps < 6`, `usedShare > 0.9` |
        | yes or no | `overClip`, `!overClip` |
        | text | `clamp == "MC-30"`, `clamp not in ("MC-30", "MC-40")` |
        | text that may be missing | `fitting.isPresent()`, `fitting.isEmpty()` |
        | list | `others contains "A.R1C1"`, `others.isEmpty()` |

        ## In a text

        `{gapM}` in `@message` or `@remedy` prints the value in the unit that the table names; lengths, and whatever is of the same kind as the unit that the designer wrote, in the designer's.

        ## What every fact has

        `subject` is what it is about. `cause` is what would have to change if it is a defect: facts of one cause become one finding with many places. `at` is where that was written, and
        where the finding points. `shown` is the unit in which the designer wrote what is compared, `units` those of components that were written in one of their own. `limitFrom` is the limit of code or practice, with document and clause, where it is one; `chain` the calculation
        behind the value; `drawnAt` where the drawing names what another document says. Their pages say what these are for each fact; a condition rarely asks about them.

        ## The list

        | topic | fact | what it says |
        |---|---|---|
        """
        + rows;
  }

  private String page(String topic, List<Class<?>> facts) {
    StringBuilder page =
        new StringBuilder("# Facts: " + topic + "\n\n[How to read this](../facts.md).\n");
    facts.forEach(fact -> page.append(section(fact)));
    return page.toString();
  }

  private String section(Class<?> fact) {
    FactSource source = FactSource.of(fact);
    StringBuilder rows = new StringBuilder();
    for (RecordComponent component : fact.getRecordComponents()) {
      String name = component.getName();
      if (!PLACED.contains(name) && !KEPT.contains(name)) {
        rows.append(row(component, source.meaning(name).orElse("")));
      }
    }
    return "\n## %s\n\n%s\n\n    import %s\n\n%s\n%s\n\nJudged by %s.\n"
        .formatted(
            fact.getSimpleName(),
            source.says(),
            fact.getName(),
            rows.isEmpty()
                ? ""
                : "| holds | kind | unit | what it is | printed in |\n|---|---|---|---|---|\n"
                    + rows,
            placed(source),
            judges(fact));
  }

  /** What the components say that every fact has. */
  private static String placed(FactSource source) {
    List<String> said = new ArrayList<>();
    PLACED.forEach(name -> add(said, source, name));
    KEPT.forEach(name -> add(said, source, name));
    return said.isEmpty() ? "Subject and place as for every fact." : String.join("; ", said) + ".";
  }

  private static void add(List<String> said, FactSource source, String name) {
    String text = source.components().getOrDefault(name, "");
    if (!text.isEmpty()) {
      said.add("`" + name + "`: " + text);
    }
  }

  private static String row(RecordComponent component, String meaning) {
    Matcher unit = UNIT.matcher(meaning);
    String written = unit.find() ? unit.group(1) : "";
    String name = component.getName();
    return "| `%s` | %s | %s | %s | %s |\n"
        .formatted(
            name,
            kind(component.getGenericType()),
            written.isEmpty() ? si(component) : written,
            UNIT.matcher(meaning).replaceAll(""),
            printed(component));
  }

  private static String kind(Type type) {
    if (type instanceof ParameterizedType of) {
      String inner =
          Arrays.stream(of.getActualTypeArguments())
              .map(FactDocs::kind)
              .collect(Collectors.joining(" to "));
      String raw = ((Class<?>) of.getRawType()).getSimpleName();
      return switch (raw) {
        case "Optional" -> inner + ", may be missing";
        case "List" -> "list of " + inner;
        default -> raw + " of " + inner;
      };
    }
    String name = ((Class<?>) type).getSimpleName();
    return switch (name) {
      case "double", "Double", "OptionalDouble" -> "number";
      case "int", "Integer", "OptionalInt" -> "whole number";
      case "boolean" -> "yes or no";
      case "String" -> "text";
      default -> name.toLowerCase(java.util.Locale.ROOT);
    };
  }

  private static boolean isNumber(RecordComponent component) {
    return component.getType() == double.class;
  }

  /** The unit of the SI that the ending of a number's name means. */
  private static String si(RecordComponent component) {
    if (!isNumber(component)) {
      return "";
    }
    String name = component.getName();
    Unit unit = Suffix.unit(name, Unit.NUMBER);
    return switch (unit.dimension()) {
      case NUMBER -> name.endsWith("Share") ? "1" : "";
      case LENGTH -> "m";
      case ANGLE -> "rad";
      default -> unit.factor() == 1 && unit.offset() == 0 ? unit.symbol() : siOf(name);
    };
  }

  private static String siOf(String name) {
    if (name.endsWith("M2")) {
      return "m²";
    }
    return name.endsWith("C") ? "°C" : name.replaceAll(".*[a-z0-9]", "");
  }

  private static String printed(RecordComponent component) {
    Unit unit = Suffix.unit(component.getName(), Unit.NUMBER);
    if (!isNumber(component) || unit.dimension() == Dimension.NUMBER && unit.symbol().isEmpty()) {
      return "";
    }
    return unit.dimension() == Dimension.LENGTH
        ? "as written, else " + unit.symbol()
        : unit.symbol();
  }

  private String judges(Class<?> fact) {
    String rules =
        cards.stream()
            .filter(card -> card.judges().equals(fact.getSimpleName()))
            .map(card -> "[%s](../rules/%s.md)".formatted(card.id(), card.id()))
            .collect(Collectors.joining(", "));
    return rules.isEmpty() ? "no rule that ships" : rules;
  }

  /** Components of a fact whose meaning no source says. */
  static List<String> silent(Class<?> fact) {
    FactSource source = FactSource.of(fact);
    List<String> silent = new ArrayList<>();
    for (RecordComponent component : fact.getRecordComponents()) {
      String name = component.getName();
      boolean everyFact = PLACED.contains(name) || KEPT.contains(name);
      if (!everyFact && source.meaning(name).isEmpty()) {
        silent.add(fact.getSimpleName() + "." + name);
      }
    }
    return silent;
  }

  /** All facts in their order. */
  List<Class<?>> all() {
    List<Class<?>> all = new ArrayList<>();
    byTopic.values().forEach(all::addAll);
    all.removeIf(type -> !Fact.class.isAssignableFrom(type));
    return all;
  }
}
