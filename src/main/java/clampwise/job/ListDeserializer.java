package clampwise.job;

import clampwise.source.Node;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads a list; items that cannot be read are reported and left out. */
final class ListDeserializer extends JsonDeserializer<List<?>> {

  private final JavaType item;

  ListDeserializer(JavaType item) {
    this.item = item;
  }

  @Override
  public @Nullable List<?> deserialize(JsonParser parser, DeserializationContext context)
      throws IOException {
    Node node = ((NodeParser) parser).node();
    if (!parser.isExpectedStartArrayToken()) {
      Reading.of(context).wrongShape(node, "a list, such as [a, b]");
      parser.skipChildren();
      return null;
    }
    JsonDeserializer<Object> items = context.findContextualValueDeserializer(item, null);
    List<Object> values = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      Object value = items.deserialize(parser, context);
      if (value != null) {
        values.add(value);
      }
    }
    return Collections.unmodifiableList(values);
  }
}
