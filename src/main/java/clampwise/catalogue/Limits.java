package clampwise.catalogue;

import java.util.Map;
import java.util.Optional;

/** All limits of codes and practice by key. */
public record Limits(Map<String, Limit> byKey) {

  /** The limit of a key that ships with the program. */
  public Limit get(String key) {
    return find(key).orElseThrow(() -> new IllegalArgumentException("no limit named " + key));
  }

  public Optional<Limit> find(String key) {
    return Optional.ofNullable(byKey.get(key));
  }
}
