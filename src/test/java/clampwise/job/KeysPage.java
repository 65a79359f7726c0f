package clampwise.job;

import clampwise.units.Dimension;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes the reference page of all keys of the job file from its records. */
final class KeysPage {

  private final StringBuilder page = new StringBuilder();
  private final Set<Class<?>> seen = new LinkedHashSet<>();
  private final Deque<Class<?>> waiting = new ArrayDeque<>();

  private KeysPage() {}

  static String text() {
    return new KeysPage().write();
  }

  private String write() {
    page.append(
        """
        # Keys of the job file

        Written from the program; [job-file.md](job-file.md) says how they go together. Required keys are marked; all others may be left out. Where a
        mapping of names stands, the keys are names you choose.
        """);
    link(Job.class);
    while (!waiting.isEmpty()) {
      section(waiting.poll());
    }
    return page.toString();
  }

  private void section(Class<?> type) {
    page.append("\n## ")
        .append(title(type))
        .append("\n\n| key | value | meaning |\n|---|---|---|\n");
    for (Shape.Slot slot : Shape.of(type).slots()) {
      row(slot.key(), value(slot.value()), slot.presence(), JobSchema.doc(type, slot));
    }
    if (type == Field.class) {
      row(
          LikeFields.LIKE,
          "text",
          Shape.Presence.OPTIONAL,
          "Field from which every key that is not written is taken.");
    }
  }

  private void row(String key, String value, Shape.Presence presence, String meaning) {
    String required = presence == Shape.Presence.REQUIRED ? " (required)" : "";
    page.append("| `" + key + "`" + required + " | " + value + " | " + meaning + " |\n");
  }

  private String value(Type type) {
    if (type instanceof Class<?> plain) {
      return JobSchema.isRecordOfKeys(plain) ? link(plain) : words(plain);
    }
    ParameterizedType generic = (ParameterizedType) type;
    Type argument = generic.getActualTypeArguments()[0];
    if (generic.getRawType() == Choice.class) {
      return Arrays.stream(((Class<?>) argument).getEnumConstants())
          .map(word -> "`" + Choice.word((Enum<?>) word) + "`")
          .collect(Collectors.joining(", "));
    }
    boolean list = generic.getRawType() == List.class;
    return (list ? "list of " : "mapping of names to ") + value(argument);
  }

  private String link(Class<?> type) {
    if (seen.add(type)) {
      waiting.add(type);
    }
    String title = title(type);
    return "[" + title + "](#" + title.toLowerCase(Locale.ROOT).replace(' ', '-') + ")";
  }

  private static String title(Class<?> type) {
    return JobSchema.name(type).replace('-', ' ');
  }

  private static String words(Class<?> type) {
    if (type == Quantity.Thickness.class) {
      return "a length or a gauge, such as `0.6 mm` or `24 ga`";
    }
    return QuantityKind.all().stream()
        .filter(kind -> kind.type() == type)
        .findFirst()
        .map(KeysPage::words)
        .orElseGet(() -> plainWords(type));
  }

  private static String words(QuantityKind<?> kind) {
    if (kind.dimension() == Dimension.NUMBER) {
      return "plain number, or in %";
    }
    List<String> symbols = SchemaPatterns.symbols(kind.dimension());
    return JobSchema.name(kind.type()).replace('-', ' ') + " (" + String.join(", ", symbols) + ")";
  }

  private static String plainWords(Class<?> type) {
    return switch (type.getSimpleName()) {
      case "Count" -> "whole number";
      case "Flag" -> "`yes` or `no`";
      case "LengthRange" -> "range of lengths, such as `30 mm to 40 mm`";
      case "Spot" -> "spot on the plane, such as `[6 ft, 3 ft]`";
      case "Day" -> "date, such as `2026-04-14`";
      case "Size" -> "size along x up, such as `100 ft x 31 ft 7 in`";
      default -> "text";
    };
  }
}
