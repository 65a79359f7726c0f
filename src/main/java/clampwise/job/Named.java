package clampwise.job;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Things with names, in the order written: a mapping whose keys are free.
 *
 * @param unreadable names of things that are written but could not be read
 */
public record Named<T>(Map<String, Named.Item<T>> items, Set<String> unreadable) {

  /** One thing with its name. */
  public record Item<T>(Text name, T value) {}

  public Named {
    items = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(items));
    unreadable = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(unreadable));
  }

  public Named(Map<String, Named.Item<T>> items) {
    this(items, Set.of());
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
