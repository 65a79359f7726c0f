package clampwise.job;

import clampwise.source.Article;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The keys of a record of the job file.
 *
 * @param type the record
 * @param byKey its keys, in order
 */
public record Shape(Class<?> type, Map<String, Slot> byKey) {

  /** Records that Java cannot name as the trade does. */
  private static final Map<Class<?>, String> OTHER_WORDS =
      Map.of(
          Electrical.PvString.class, "string",
          Tested.class, "test",
          Fire.Adjacent.class, "pair of planes");

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
   */
  public record Slot(int index, String key, Presence presence, Type value) {}

  /** The keys of a record type. */
  public static Shape of(Class<?> type) {
    Shape known = Shapes.KNOWN.get(type);
    return known == null ? read(type) : known;
  }

  static Shape read(Class<?> type) {
    Map<String, Slot> byKey = new LinkedHashMap<>();
    RecordComponent[] components = type.getRecordComponents();
    for (int i = 0; i < components.length; i++) {
      if (components[i].getType() != Unreadable.class) {
        Slot slot = slot(i, components[i]);
        byKey.put(slot.key(), slot);
      }
    }
    return new Shape(type, Collections.unmodifiableMap(byKey));
  }

  /** Its keys, in order. */
  public Collection<Slot> slots() {
    return byKey.values();
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
    String word = OTHER_WORDS.getOrDefault(type, key(type.getSimpleName()).substring(1));
    String spaced = word.replace('-', ' ');
    return spaced.endsWith("s") ? spaced : Article.with(spaced);
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
    return new Slot(index, key(component.getName()), presence, TypeOf.plain(value));
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
