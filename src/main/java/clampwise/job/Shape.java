package clampwise.job;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The keys of a record of the job file.
 *
 * @param type the record
 * @param slots its keys, in order
 * @param byKey the same by key
 */
public record Shape(Class<?> type, List<Slot> slots, Map<String, Slot> byKey) {

  /** Whether a key must be written, and what stands for it if it is not. */
  public enum Presence {
    REQUIRED,
    OPTIONAL,
    LIST,
    NAMED
  }

  /**
   * One key.
   *
   * @param index place among the components
   * @param key as written in the file
   * @param value type of the value; without the {@code Optional} round it
   * @param component where it comes from
   */
  public record Slot(
      int index, String key, Presence presence, Type value, RecordComponent component) {}

  /** The keys of a record type. */
  public static Shape of(Class<?> type) {
    Map<String, Slot> byKey = new LinkedHashMap<>();
    RecordComponent[] components = type.getRecordComponents();
    for (int i = 0; i < components.length; i++) {
      if (components[i].getType() != Unreadable.class) {
        Slot slot = slot(i, components[i]);
        byKey.put(slot.key(), slot);
      }
    }
    return new Shape(type, List.copyOf(byKey.values()), byKey);
  }

  /** A component's name as a key: {@code frameHeight} is {@code frame-height}. */
  public static String key(String component) {
    StringBuilder key = new StringBuilder();
    for (char c : component.toCharArray()) {
      if (Character.isUpperCase(c)) {
        key.append('-');
      }
      key.append(Character.toLowerCase(c));
    }
    return key.toString();
  }

  /** What the record is, in words: {@code ModuleType} is a module type. */
  public String words() {
    String word = key(type.getSimpleName()).substring(1).replace('-', ' ');
    if (word.endsWith("s")) {
      return word.toLowerCase(Locale.ROOT);
    }
    return ("aeiou".indexOf(word.charAt(0)) < 0 ? "a " : "an ") + word.toLowerCase(Locale.ROOT);
  }

  Constructor<?> constructor() throws NoSuchMethodException {
    RecordComponent[] components = type.getRecordComponents();
    Class<?>[] types = new Class<?>[components.length];
    for (int i = 0; i < types.length; i++) {
      types[i] = components[i].getType();
    }
    return type.getDeclaredConstructor(types);
  }

  private static Slot slot(int index, RecordComponent component) {
    Presence presence = presence(component.getType());
    Type whole = component.getGenericType();
    Type value =
        presence == Presence.OPTIONAL && whole instanceof ParameterizedType optional
            ? optional.getActualTypeArguments()[0]
            : whole;
    return new Slot(index, key(component.getName()), presence, value, component);
  }

  private static Presence presence(Class<?> type) {
    if (type == Optional.class) {
      return Presence.OPTIONAL;
    }
    if (type == List.class) {
      return Presence.LIST;
    }
    return type == Named.class ? Presence.NAMED : Presence.REQUIRED;
  }
}
