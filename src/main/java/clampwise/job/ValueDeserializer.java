package clampwise.job;

import clampwise.source.Node;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** Reads a value that is written as a word, a number with its unit, or a short list of them. */
final class ValueDeserializer<T> extends JsonDeserializer<T> {

  private final Reader<T> reader;

  ValueDeserializer(Reader<T> reader) {
    this.reader = reader;
  }

  /** Makes a value of a node; null after a problem. */
  @FunctionalInterface
  interface Reader<T> {
    @Nullable T read(Node node, String key, Reading reading);
  }

  /** Makes a value of a scalar; null after a problem. */
  @FunctionalInterface
  interface ScalarReader<T> {
    @Nullable T read(Node.Scalar scalar, String key, Reading reading);
  }

  Reader<T> reader() {
    return reader;
  }

  /** A reader that refuses lists and mappings. */
  static <T> ValueDeserializer<T> ofScalar(String expected, ScalarReader<T> reader) {
    return new ValueDeserializer<>(
        (node, key, reading) -> {
          if (node instanceof Node.Scalar scalar && !scalar.isEmpty()) {
            return reader.read(scalar, key, reading);
          }
          reading.wrongShape(node, expected);
          return null;
        });
  }

  @Override
  public boolean isCachable() {
    return true;
  }

  @Override
  public @Nullable T deserialize(JsonParser parser, DeserializationContext context)
      throws IOException {
    NodeParser nodes = (NodeParser) parser;
    T value = reader.read(nodes.node(), nodes.key(), Reading.of(parser));
    parser.skipChildren();
    return value;
  }
}
