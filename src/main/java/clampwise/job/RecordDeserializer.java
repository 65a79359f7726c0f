package clampwise.job;

import clampwise.source.Nearest;
import clampwise.source.Node;
import clampwise.source.Problem;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a mapping into a record and reports every key that does not fit, not only the first. */
final class RecordDeserializer extends JsonDeserializer<Object> {

  private static final int FEW_KEYS = 8;

  private final Shape shape;
  private final Constructor<?> constructor;

  RecordDeserializer(Class<?> type) {
    this.shape = Shape.of(type);
    try {
      this.constructor = shape.constructor();
    } catch (NoSuchMethodException e) {
      throw new IllegalArgumentException(type + " is no record", e);
    }
  }

  Shape shape() {
    return shape;
  }

  @Override
  public boolean isCachable() {
    return true;
  }

  @Override
  public @Nullable Object deserialize(JsonParser parser, DeserializationContext context)
      throws IOException {
    return deserialize((NodeParser) parser, context, "");
  }

  /**
   * Reads a mapping.
   *
   * @param under the key it stands under; empty in lists and where names are free
   */
  private @Nullable Object deserialize(
      NodeParser nodes, DeserializationContext context, String under) throws IOException {
    Node node = nodes.node();
    Reading reading = Reading.of(nodes);
    if (!nodes.isExpectedStartObjectToken() || reading.reported().contains(node)) {
      return refuse(nodes, under, reading);
    }
    @Nullable Object[] values = new Object[constructor.getParameterCount()];
    boolean[] written = new boolean[values.length];
    while (nodes.nextToken() == JsonToken.FIELD_NAME) {
      Shape.Slot slot = slot(nodes, under, reading);
      String key = nodes.keyNode().text();
      boolean empty = nodes.nextToken() == JsonToken.VALUE_NULL;
      if (empty || slot == null) {
        skip(nodes, key, written, reading);
        continue;
      }
      written[slot.index()] = true;
      values[slot.index()] = value(slot, nodes, context);
    }
    reportMissing(node, under, written, reading);
    return build(values);
  }

  /** What the mapping is, in words. */
  private String words(String under) {
    return under.isEmpty() ? shape.words() : under;
  }

  /** Passes over a value; that of an unknown key may be what the key meant asks for. */
  private void skip(NodeParser nodes, String key, boolean[] written, Reading reading)
      throws IOException {
    if (!shape.byKey().containsKey(key)) {
      Optional<String> meant = Nearest.to(key, shape.byKey().keySet());
      reading.lost().addMisspelt(nodes.node(), meant);
      meant.ifPresent(known -> written[slotOf(known).index()] = true);
    }
    nodes.skipChildren();
  }

  private Shape.Slot slotOf(String key) {
    return Objects.requireNonNull(shape.byKey().get(key));
  }

  private @Nullable Object refuse(NodeParser nodes, String under, Reading reading)
      throws IOException {
    Node node = nodes.node();
    if (!reading.reported().contains(node)) {
      reading.wrongShape(node, words(under) + ": a mapping with the keys " + someKeys());
    }
    nodes.skipChildren();
    return null;
  }

  private Shape.@Nullable Slot slot(NodeParser parser, String under, Reading reading) {
    Node.Scalar key = parser.keyNode();
    Shape.Slot slot = shape.byKey().get(key.text());
    if (slot == null) {
      Optional<String> nearest = Nearest.to(key.text(), shape.byKey().keySet());
      String found = "the unknown key " + Reading.quoted(key.text());
      String expected = expected(key.text(), words(under), nearest.isPresent());
      reading.problems().add(new Problem(key.at(), found, expected, nearest));
    }
    return slot;
  }

  /** In braces a comma ends the value, so that the decimals of {@code 1,5} become a key. */
  private String expected(String key, String words, boolean isLike) {
    return !key.isEmpty() && Character.isDigit(key.charAt(0))
        ? "a point for decimals, such as 1.5, and brackets round a list: in braces a comma ends"
            + " the value"
        : "a key of " + words + ": " + (isLike ? someKeys() : String.join(", ", keys()));
  }

  private List<String> keys() {
    return shape.slots().stream().map(Shape.Slot::key).toList();
  }

  private String someKeys() {
    List<String> keys = keys();
    return keys.size() <= FEW_KEYS
        ? String.join(", ", keys)
        : String.join(", ", keys.subList(0, FEW_KEYS)) + " and others";
  }

  private static @Nullable Object value(
      Shape.Slot slot, NodeParser nodes, DeserializationContext context) throws IOException {
    Node node = nodes.node();
    JsonDeserializer<?> reader = Deserializing.of(slot.value());
    Object value =
        reader instanceof RecordDeserializer record
            ? record.deserialize(nodes, context, slot.key())
            : reader.deserialize(nodes, context);
    if (value == null) {
      Reading.of(nodes).lost().add(node);
    }
    return value;
  }

  private void reportMissing(Node node, String under, boolean[] written, Reading reading) {
    for (Shape.Slot slot : shape.slots()) {
      boolean missing = slot.presence() == Shape.Presence.REQUIRED && !written[slot.index()];
      if (missing && !reading.isCutOff(node)) {
        reading.problem(
            node.at(), words(under) + " without " + slot.key(), "the key " + slot.key());
      }
    }
  }

  private @Nullable Object build(@Nullable Object[] values) throws IOException {
    for (Shape.Slot slot : shape.slots()) {
      Object filled = filled(slot, values[slot.index()]);
      if (filled == null) {
        return null;
      }
      values[slot.index()] = filled;
    }
    for (int i = 0; i < values.length; i++) {
      values[i] = values[i] == null ? Unreadable.NOTHING : values[i];
    }
    try {
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IOException("cannot make " + shape.type(), e);
    }
  }

  private static @Nullable Object filled(Shape.Slot slot, @Nullable Object value) {
    return switch (slot.presence()) {
      case REQUIRED -> value;
      case OPTIONAL -> Optional.ofNullable(value);
      case LIST -> value == null ? List.of() : value;
      case NAMED -> value == null ? Named.none() : value;
    };
  }
}
