package clampwise.job;

import clampwise.source.Node;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.deser.Deserializers;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.jsontype.TypeDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.type.CollectionType;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Binds nodes to the records of the job with Jackson, without annotations. */
final class Binding {

  private static final ObjectReader READER = mapper().reader();

  private Binding() {}

  /** The record of a node; empty, after a problem, if the node cannot be read as one. */
  static <T> Optional<T> bind(Node node, Class<T> type, Reading reading) {
    try {
      T value =
          READER
              .withAttribute(Reading.class, reading)
              .forType(type)
              .readValue(new NodeParser(node));
      return Optional.ofNullable(value);
    } catch (IOException e) {
      throw new UncheckedIOException("binding reads no files", e);
    }
  }

  private static JsonMapper mapper() {
    return JsonMapper.builder()
        .disable(MapperFeature.USE_ANNOTATIONS)
        .addModule(new JobModule())
        .build();
  }

  private static final class JobModule extends SimpleModule {
    private static final long serialVersionUID = 1;

    @Override
    public void setupModule(SetupContext context) {
      context.addDeserializers(new JobDeserializers());
    }
  }

  private static final class JobDeserializers extends Deserializers.Base {

    private final Map<Class<?>, JsonDeserializer<?>> values = values();

    @Override
    public JsonDeserializer<?> findBeanDeserializer(
        JavaType type, DeserializationConfig config, BeanDescription description) {
      Class<?> raw = type.getRawClass();
      JsonDeserializer<?> value = values.get(raw);
      if (value != null) {
        return value;
      }
      if (raw == Choice.class) {
        return choice(type.containedType(0).getRawClass());
      }
      return raw == Named.class
          ? new NamedDeserializer(type.containedType(0))
          : new RecordDeserializer(raw);
    }

    @Override
    public JsonDeserializer<?> findCollectionDeserializer(
        CollectionType type,
        DeserializationConfig config,
        BeanDescription description,
        TypeDeserializer itemTypes,
        JsonDeserializer<?> items) {
      return new ListDeserializer(type.getContentType());
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
}
