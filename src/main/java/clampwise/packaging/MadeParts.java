package clampwise.packaging;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.objectweb.asm.Type;

/** Looks into values that are written as code. */
final class MadeParts {

  /** Single values that one method may make: far from the most that a method can hold. */
  private static final int MOST_IN_A_METHOD = 60;

  private static final List<Class<?>> KINDS =
      List.of(Optional.class, List.class, Set.class, Map.class);

  /** A component of a record. */
  record Component(Type type, Object value) {}

  private MadeParts() {}

  /** The type under which a value is handed on. */
  static Type typeOf(Object value) {
    return Type.getType(
        KINDS.stream()
            .filter(kind -> kind.isInstance(value))
            .findFirst()
            .orElseGet(value::getClass));
  }

  static List<Component> components(Record written) {
    return Arrays.stream(written.getClass().getRecordComponents())
        .map(each -> new Component(Type.getType(each.getType()), read(each, written)))
        .toList();
  }

  /** Whether a value needs a method of its own. */
  static boolean isLong(Object value) {
    return size(value) > MOST_IN_A_METHOD;
  }

  private static int size(Object value) {
    return 1 + parts(value).mapToInt(MadeParts::size).sum();
  }

  private static Stream<?> parts(Object value) {
    if (value instanceof Record written) {
      return components(written).stream().map(Component::value);
    }
    if (value instanceof Optional<?> optional) {
      return optional.stream();
    }
    if (value instanceof Map<?, ?> map) {
      return Stream.concat(map.keySet().stream(), map.values().stream());
    }
    return value instanceof Collection<?> items ? items.stream() : Stream.empty();
  }

  private static Object read(RecordComponent component, Record written) {
    try {
      Method accessor = component.getAccessor();
      accessor.setAccessible(true);
      return accessor.invoke(written);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot read " + component, e);
    }
  }
}
