package clampwise.job;

import clampwise.source.Node;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Nodes as a schema-aware editor sees them: plain scalars typed by the core schema of YAML 1.2. */
final class Snippets {

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]+)?");
  private static final JsonNodeFactory JSON = JsonNodeFactory.withExactBigDecimals(true);

  private Snippets() {}

  static JsonNode json(Node node) {
    if (node instanceof Node.Mapping mapping) {
      ObjectNode object = JSON.objectNode();
      mapping.entries().forEach(entry -> object.set(entry.key().text(), json(entry.value())));
      return object;
    }
    if (node instanceof Node.Sequence sequence) {
      ArrayNode array = JSON.arrayNode();
      sequence.items().forEach(item -> array.add(json(item)));
      return array;
    }
    return scalar((Node.Scalar) node);
  }

  private static JsonNode scalar(Node.Scalar scalar) {
    String text = scalar.text();
    if (scalar.isEmpty()) {
      return JSON.nullNode();
    }
    if (scalar.quoted()) {
      return JSON.textNode(text);
    }
    if (text.equals("true") || text.equals("false")) {
      return JSON.booleanNode(text.equals("true"));
    }
    return NUMBER.matcher(text).matches()
        ? JSON.numberNode(new BigDecimal(text))
        : JSON.textNode(text);
  }
}
