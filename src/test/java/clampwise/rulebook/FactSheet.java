package clampwise.rulebook;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Node;
import clampwise.source.Problems;
import clampwise.source.Span;
import clampwise.source.YamlReader;
import clampwise.units.Unit;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Facts of one job as another program can read them: numbers, flags and names of each subject.
 *
 * @param facts what could be read in full
 * @param faults where something is missing or of another kind, as {@code /facts/TYPE/NUMBER/KEY}
 */
record FactSheet(List<Fact> facts, List<String> faults) {

  /** How facts of one type are read. */
  static final class Kind {
    final Class<?> type;
    private final RecordComponent[] components;
    private final Class<?>[] types;
    private final boolean[] others;
    private final Map<String, Integer> places = new HashMap<>();
    private final Constructor<?> constructor;

    Kind(Class<?> type) {
      this.type = type;
      this.components = type.getRecordComponents();
      this.types = new Class<?>[components.length];
      this.others = new boolean[components.length];
      for (int i = 0; i < components.length; i++) {
        types[i] = components[i].getType();
        others[i] = !isWritten(components[i]);
        if (!others[i]) {
          places.put(components[i].getName(), i);
        }
      }
      try {
        this.constructor = type.getDeclaredConstructor(types);
      } catch (NoSuchMethodException e) {
        throw new AssertionError(e);
      }
    }

    List<RecordComponent> written() {
      return Arrays.stream(components).filter(Kind::isWritten).toList();
    }

    static boolean isWritten(RecordComponent component) {
      return component.getType().isPrimitive() || component.getType() == String.class;
    }

    private Optional<Fact> read(Node.Mapping values, String path, List<String> faults) {
      Node[] written = new Node[components.length];
      Subject subject = NOBODY;
      for (Node.Entry entry : values.entries()) {
        Integer place = places.get(entry.key().text());
        if (place != null) {
          written[place] = entry.value();
        } else if (entry.value() instanceof Node.Scalar name) {
          subject = new Subject(name.text());
        }
      }
      return read(written, new Whole(subject, values.at()), path, faults);
    }

    private Optional<Fact> read(Node[] written, Whole whole, String path, List<String> faults) {
      Object[] arguments = new Object[components.length];
      int before = faults.size();
      for (int i = 0; i < components.length; i++) {
        if (others[i]) {
          arguments[i] = other(types[i], whole);
        } else {
          arguments[i] = written[i] instanceof Node.Scalar one ? value(types[i], one) : null;
          if (arguments[i] == null) {
            faults.add(path + "/" + components[i].getName());
          }
        }
      }
      return faults.size() > before ? Optional.empty() : Optional.of(made(arguments));
    }

    private Fact made(Object[] arguments) {
      try {
        return (Fact) constructor.newInstance(arguments);
      } catch (ReflectiveOperationException e) {
        throw new AssertionError(e);
      }
    }
  }

  /** The value of a scalar; nothing if it is of another kind. */
  private static @Nullable Object value(Class<?> type, Node.Scalar scalar) {
    String text = scalar.text();
    if (type == String.class) {
      return text;
    }
    if (scalar.quoted()) {
      return null;
    }
    if (type == boolean.class) {
      return text.equals("true") ? Boolean.TRUE : text.equals("false") ? Boolean.FALSE : null;
    }
    try {
      return type == int.class ? (Object) Integer.valueOf(text) : (Object) Double.valueOf(text);
    } catch (NumberFormatException e) {
      return null;
    }
  }

  /** What holds for a fact as a whole. */
  private record Whole(Subject subject, Span at) {}

  private static Object other(Class<?> type, Whole whole) {
    if (type == Subject.class) {
      return whole.subject();
    }
    if (type == Span.class) {
      return whole.at();
    }
    return type == Unit.class ? Unit.METRE : type == List.class ? List.of() : rest(type);
  }

  private static Object rest(Class<?> type) {
    return type == Map.class ? Map.of() : type == Optional.class ? Optional.empty() : NO_LIMIT;
  }

  private static final Subject NOBODY = Subject.of("");
  private static final clampwise.catalogue.Limit NO_LIMIT =
      clampwise.catalogue.LimitsReader.read().byKey().values().iterator().next();

  /** Reads a sheet by the kinds that it may hold. */
  static FactSheet read(String file, String text, Map<String, Kind> kinds) {
    List<Fact> facts = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    Node.Mapping sheet = (Node.Mapping) YamlReader.read(file, text, new Problems()).orElseThrow();
    for (Node.Entry type : sheet.mapping("facts").orElseThrow().entries()) {
      Kind kind = kinds.get(type.key().text());
      List<Node> items = ((Node.Sequence) type.value()).items();
      for (int i = 0; i < items.size(); i++) {
        String path = "/facts/" + type.key().text() + "/" + i;
        kind.read((Node.Mapping) items.get(i), path, faults).ifPresent(facts::add);
      }
    }
    return new FactSheet(facts, faults);
  }
}
