package clampwise.rulebook;

import clampwise.facts.Fact;
import clampwise.rulebook.FactSheet.Kind;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** Writes facts as sheets that any program can read, and what such a sheet has to hold. */
final class SheetWriter {
  private static final int DISTURBED = 17;
  private static final int BROKEN = 23;
  private static final int DIGITS = 6;

  private final Map<String, Kind> kinds;

  SheetWriter(Map<String, Kind> kinds) {
    this.kinds = kinds;
  }

  /** The facts as they are. */
  String plain(List<Fact> facts) {
    return sheet(facts, number -> values -> values);
  }

  /** Some facts with their numbers in the places of others, so that they break their rules. */
  String disturbed(List<Fact> facts) {
    return sheet(facts, number -> number % DISTURBED == 0 ? SheetWriter::turned : values -> values);
  }

  /** Some facts that lack a value or have a text in the place of a number. */
  String broken(List<Fact> facts) {
    return sheet(
        facts,
        number ->
            number % BROKEN != 0
                ? values -> values
                : number % 2 == 0 ? SheetWriter::shortened : SheetWriter::quoted);
  }

  private interface Changes {
    UnaryOperator<Map<String, String>> of(int number);
  }

  private String sheet(List<Fact> facts, Changes changes) {
    StringBuilder out = new StringBuilder("facts:\n");
    for (Kind kind : kinds.values()) {
      List<Fact> own = facts.stream().filter(fact -> fact.getClass() == kind.type).toList();
      if (!own.isEmpty()) {
        out.append("  ").append(kind.type.getSimpleName()).append(":\n");
      }
      int number = 0;
      for (Fact fact : own) {
        out.append("    - {subject: \"").append(fact.subject().path()).append('"');
        changes
            .of(number++)
            .apply(values(kind, fact))
            .forEach((name, value) -> out.append(", ").append(name).append(": ").append(value));
        out.append("}\n");
      }
    }
    return out.toString();
  }

  private static Map<String, String> values(Kind kind, Fact fact) {
    Map<String, String> values = new TreeMap<>();
    for (RecordComponent component : kind.written()) {
      try {
        Object value = component.getAccessor().invoke(fact);
        values.put(
            component.getName(),
            value instanceof String text ? '"' + text + '"' : value.toString());
      } catch (ReflectiveOperationException e) {
        throw new AssertionError(e);
      }
    }
    return values;
  }

  /** With as many digits as somebody would write. */
  private static String written(Object value) {
    if (value instanceof Double number) {
      return Double.toString(new BigDecimal(number).round(new MathContext(DIGITS)).doubleValue());
    }
    return value instanceof String text ? '"' + text + '"' : value.toString();
  }

  private static boolean isNumber(String value) {
    return !value.startsWith("\"") && !value.equals("true") && !value.equals("false");
  }

  private static Map<String, String> turned(Map<String, String> values) {
    List<String> names = values.keySet().stream().filter(n -> isNumber(values.get(n))).toList();
    List<String> numbers = new ArrayList<>(names.stream().map(values::get).toList());
    Collections.rotate(numbers, 1);
    Map<String, String> turned = new TreeMap<>(values);
    boolean alike = numbers.stream().allMatch(n -> n.contains(".") == numbers.get(0).contains("."));
    for (int i = 0; alike && i < names.size(); i++) {
      turned.put(names.get(i), numbers.get(i));
    }
    return turned;
  }

  private static Map<String, String> shortened(Map<String, String> values) {
    Map<String, String> fewer = new TreeMap<>(values);
    fewer.remove(fewer.keySet().iterator().next());
    return fewer;
  }

  private static Map<String, String> quoted(Map<String, String> values) {
    Map<String, String> quoted = new TreeMap<>(values);
    quoted.replaceAll((name, value) -> isNumber(value) ? '"' + value + '"' : value);
    return quoted;
  }

  /** A JSON Schema of the sheets. */
  String schema() {
    StringBuilder types = new StringBuilder();
    for (Kind kind : kinds.values()) {
      List<String> keys = new ArrayList<>();
      List<String> properties = new ArrayList<>();
      for (RecordComponent component : kind.written()) {
        keys.add('"' + component.getName() + '"');
        String type = type(component.getType());
        properties.add("\"%s\": {\"type\": \"%s\"}".formatted(component.getName(), type));
      }
      types.append(types.isEmpty() ? "" : ",\n");
      types.append(
          """
          "%s": {"type": "array", "items": {"type": "object", "required": [%s],
            "properties": {%s}}}"""
              .formatted(
                  kind.type.getSimpleName(),
                  String.join(", ", keys),
                  String.join(", ", properties)));
    }
    return """
        {"type": "object", "required": ["facts"], "properties": {"facts": {"type": "object",
        "additionalProperties": false, "properties": {
        %s}}}}
        """
        .formatted(types);
  }

  private static String type(Class<?> type) {
    return type == String.class
        ? "string"
        : type == boolean.class ? "boolean" : type == int.class ? "integer" : "number";
  }
}
