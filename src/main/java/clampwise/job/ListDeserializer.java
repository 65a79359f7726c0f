package clampwise.job;

import clampwise.source.Node;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import java.io.IOException;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads a list. A list with an item that cannot be read is not read at all, for it would mean
 * something else without it; only items that name modules or parts are kept, so that their names
 * are checked too.
 */
final class ListDeserializer extends JsonDeserializer<List<?>> {

  private static final Set<Type> KEPT =
      Set.of(Attach.Point.class, Bonding.Jumper.class, Bonding.Lug.class, Field.Column.class);

  private final Type item;

  ListDeserializer(Type item) {
    this.item = item;
  }

  @Override
  public @Nullable List<?> deserialize(JsonParser parser, DeserializationContext context)
      throws IOException {
    NodeParser nodes = (NodeParser) parser;
    Node node = nodes.node();
    String key = nodes.key();
    if (!parser.isExpectedStartArrayToken()) {
      Reading.of(parser).wrongShape(node, "a list, such as [a, b]");
      parser.skipChildren();
      return null;
    }
    JsonDeserializer<?> items = Deserializing.of(item);
    List<Object> values = new ArrayList<>();
    boolean complete = true;
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      Node itemNode = nodes.node();
      Object value = items.deserialize(parser, context);
      if (value == null) {
        complete = false;
        Reading.of(parser).lost().add(itemNode);
      } else {
        values.add(value);
      }
    }
    if (node instanceof Node.Sequence list && list.items().isEmpty() && !mayBeEmpty(key)) {
      Reading.of(parser).problem(node.at(), "an empty list", "one item or more, or no key");
      return null;
    }
    return complete || KEPT.contains(item) ? Collections.unmodifiableList(values) : null;
  }

  /** Seam numbers stand under the number of their line. */
  private boolean mayBeEmpty(String key) {
    return item == Count.class || Ranges.mayBeEmpty(key);
  }
}
