package clampwise.job;

import clampwise.source.Node;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import java.io.IOException;
import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads a mapping with free keys; values that cannot be read leave their name behind. */
final class NamedDeserializer extends JsonDeserializer<Named<?>> {

  private final Type item;

  NamedDeserializer(Type item) {
    this.item = item;
  }

  @Override
  public @Nullable Named<?> deserialize(JsonParser parser, DeserializationContext context)
      throws IOException {
    NodeParser nodes = (NodeParser) parser;
    if (!parser.isExpectedStartObjectToken()) {
      Reading.of(parser).wrongShape(nodes.node(), "a mapping of names, such as north: {...}");
      parser.skipChildren();
      return null;
    }
    JsonDeserializer<?> items = Deserializing.of(item);
    Map<String, Named.Item<Object>> values = new LinkedHashMap<>();
    Set<String> unreadable = new LinkedHashSet<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      Node.Scalar name = nodes.keyNode();
      parser.nextToken();
      Node node = nodes.node();
      Object value = items.deserialize(parser, context);
      if (value == null) {
        Reading.of(parser).lost().add(node);
        unreadable.add(name.text());
      } else {
        values.put(name.text(), new Named.Item<>(new Text(name.text(), name.at()), value));
      }
    }
    return new Named<>(values, unreadable);
  }
}
