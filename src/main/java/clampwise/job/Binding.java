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
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** Binds nodes to the records of the job with Jackson, without annotations. */
final class Binding {

  private static final ObjectReader READER = mapper().reader();

  private Binding() {}

  /** Gets everything ready that the first binding needs, so that it can be done ahead of it. */
  static void prepare() {
    Deserializing.of(Job.class);
  }

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

    @Override
    public JsonDeserializer<?> findBeanDeserializer(
        JavaType type, DeserializationConfig config, BeanDescription description) {
      return Deserializing.of(type.getRawClass());
    }
  }
}
