package clampwise.job;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Things with names, in the order written: a mapping whose keys are free. */
public record Named<T>(Map<String, Named.Item<T>> items) {

  /** One thing with its name. */
  public record Item<T>(Text name, T value) {}

  public Named {
    items = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(items));
  }

  public static <T> Named<T> none() {
    return new Named<>(Map.of());
  }

  public Optional<T> find(String name) {
    return Optional.ofNullable(items.get(name)).map(Item::value);
  }

  public Set<String> names() {
    return items.keySet();
  }

  public Collection<Item<T>> all() {
    return items.values();
  }

  public boolean isEmpty() {
    return items.isEmpty();
  }
}
