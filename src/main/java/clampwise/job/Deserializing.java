package clampwise.job;

import com.fasterxml.jackson.databind.JsonDeserializer;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Finds the deserializer of a type of the job file. Jackson asks for the root only; below it each
 * deserializer asks here, because Jackson looks into every class that it is asked for.
 */
final class Deserializing {

  private static final Map<Class<?>, JsonDeserializer<?>> VALUES = values();

  private static final Map<Type, JsonDeserializer<?>> KNOWN = new ConcurrentHashMap<>();

  private Deserializing() {}

  static JsonDeserializer<?> of(Type type) {
    JsonDeserializer<?> known = KNOWN.get(type);
    if (known != null) {
      return known;
    }
    JsonDeserializer<?> made = make(type);
    KNOWN.put(type, made);
    return made;
  }

  /** Makes the deserializers of a type and of all types below it. */
  static void prepare(Type type) {
    if (type instanceof ParameterizedType generic && generic.getRawType() != Choice.class) {
      prepare(generic.getActualTypeArguments()[0]);
    }
    boolean known = KNOWN.containsKey(type);
    if (!known && of(type) instanceof RecordDeserializer record) {
      record.shape().slots().forEach(slot -> prepare(slot.value()));
    }
  }

  private static JsonDeserializer<?> make(Type type) {
    if (type instanceof ParameterizedType generic) {
      return make((Class<?>) generic.getRawType(), generic.getActualTypeArguments()[0]);
    }
    JsonDeserializer<?> value = VALUES.get(type);
    return value == null ? new RecordDeserializer((Class<?>) type) : value;
  }

  private static JsonDeserializer<?> make(Class<?> raw, Type item) {
    if (raw == Choice.class) {
      return choice((Class<?>) item);
    }
    if (raw == List.class) {
      return new ListDeserializer(item);
    }
    if (raw == Named.class) {
      return new NamedDeserializer(item);
    }
    throw new IllegalArgumentException("the job file has no " + raw);
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static JsonDeserializer<?> choice(Class<?> type) {
    return Words.choice((Class) type);
  }

  private static Map<Class<?>, JsonDeserializer<?>> values() {
    Map<Class<?>, JsonDeserializer<?>> values = new HashMap<>();
    values.put(Text.class, Words.text());
    values.put(Count.class, Words.count());
    values.put(Flag.class, Words.flag());
    values.put(Day.class, Words.day());
    values.put(LengthRange.class, Quantities.lengthRange());
    values.put(Spot.class, Quantities.spot());
    values.put(Size.class, Quantities.size());
    values.put(Quantity.Thickness.class, Quantities.thickness());
    for (QuantityKind<?> kind : QuantityKind.all()) {
      values.put(kind.type(), Quantities.of(kind));
    }
    return values;
  }
}
