package clampwise.rulebook;

import clampwise.facts.Fact;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** Reads the components of facts by name. */
final class Components {
  private final Map<Class<?>, Map<String, Method>> known = new ConcurrentHashMap<>();

  /** The component of that name; empty if it holds nothing. */
  Optional<Object> find(Fact fact, String name) {
    Method accessor = accessors(fact.getClass()).get(name);
    if (accessor == null) {
      throw new IllegalArgumentException(fact.getClass().getSimpleName() + " has no " + name);
    }
    return opened(read(accessor, fact));
  }

  /** The number a component holds, if it holds one. */
  Optional<Double> number(Fact fact, String name) {
    return find(fact, name).filter(Number.class::isInstance).map(n -> ((Number) n).doubleValue());
  }

  private Map<String, Method> accessors(Class<?> type) {
    return known.computeIfAbsent(type, Components::accessorsOf);
  }

  private static Map<String, Method> accessorsOf(Class<?> type) {
    return Arrays.stream(type.getRecordComponents())
        .collect(Collectors.toMap(RecordComponent::getName, RecordComponent::getAccessor));
  }

  private static Object read(Method accessor, Fact fact) {
    try {
      return accessor.invoke(fact);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Optional<Object> opened(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.map(Object.class::cast);
    }
    if (value instanceof OptionalDouble number) {
      return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
    }
    if (value instanceof OptionalInt number) {
      return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
    }
    return Optional.of(value);
  }
}
