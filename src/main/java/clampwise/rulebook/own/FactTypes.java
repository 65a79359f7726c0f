package clampwise.rulebook.own;

import clampwise.rulebook.RuleIndex;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The facts that rules can judge, by their simple names. */
final class FactTypes {
  private final Map<String, String> classes = new TreeMap<>();

  private FactTypes(List<String> names) {
    names.forEach(name -> classes.put(simple(name), name));
  }

  /** Those of this program. */
  static FactTypes packed() {
    return new FactTypes(RuleIndex.lines(RuleIndex.FACTS));
  }

  private static String simple(String name) {
    return name.substring(name.lastIndexOf('.') + 1);
  }

  List<String> names() {
    return List.copyOf(classes.keySet());
  }

  /** The full name of a fact, as it is imported. */
  Optional<String> find(String simpleName) {
    return Optional.ofNullable(classes.get(simpleName));
  }

  /** Whether a full name is that of a fact. */
  boolean has(String fullName) {
    return classes.containsValue(fullName);
  }

  /** The names of what a fact holds; none if there is no such fact. */
  List<String> components(String simpleName) {
    List<String> names = new ArrayList<>();
    for (RecordComponent component : type(simpleName)) {
      names.add(component.getName());
    }
    return names;
  }

  private RecordComponent[] type(String simpleName) {
    String name = classes.get(simpleName);
    try {
      return name == null
          ? new RecordComponent[0]
          : Class.forName(name, false, FactTypes.class.getClassLoader()).getRecordComponents();
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException("the build lacks the fact " + name, e);
    }
  }
}
