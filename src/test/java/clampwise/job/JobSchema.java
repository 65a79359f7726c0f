package clampwise.job;

import clampwise.units.Dimension;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Locale;
import java.util.Objects;

/**
 * Writes the JSON Schema of the job file from its records.
 *
 * <p>Numbers without a unit are allowed everywhere; for each dimension whose unit the job does not
 * declare, {@link UnitSchema} asks for units again.
 */
final class JobSchema {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private final ObjectNode definitions = JSON.objectNode();

  private JobSchema() {}

  static String text() {
    JobSchema schema = new JobSchema();
    ObjectNode root =
        schema.root(
            Job.class,
            "clampwise job file",
            "One layout of modules on a metal roof, as its designer wrote it.");
    root.set("allOf", new UnitSchema(schema.definitions).conditions());
    root.set("$defs", schema.definitions);
    return written(root);
  }

  /** The schema of a file beside jobs, whose records have no numbers with units. */
  static String of(Class<?> type, String title, String description) {
    JobSchema schema = new JobSchema();
    ObjectNode root = schema.root(type, title, description);
    root.set("$defs", schema.definitions);
    return written(root);
  }

  private ObjectNode root(Class<?> type, String title, String description) {
    ObjectNode root = JSON.objectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("title", title);
    root.put("description", description);
    return root.put("$ref", reference(type).get("$ref").asText());
  }

  private static String written(ObjectNode root) {
    try {
      return new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT).writeValueAsString(root)
          + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private ObjectNode reference(Class<?> type) {
    String name = name(type);
    if (!definitions.has(name)) {
      definitions.putObject(name);
      definitions.set(name, type.isRecord() && isRecordOfKeys(type) ? keys(type) : value(type));
    }
    return JSON.objectNode().put("$ref", "#/$defs/" + name);
  }

  static String name(Class<?> type) {
    Class<?> outer = type.getEnclosingClass();
    String own = Shape.key(type.getSimpleName()).substring(1);
    return outer == null || outer == Quantity.class ? own : name(outer) + "-" + own;
  }

  static boolean isRecordOfKeys(Class<?> type) {
    return !Written.class.isAssignableFrom(type);
  }

  private ObjectNode keys(Class<?> type) {
    ObjectNode node = JSON.objectNode();
    node.put("type", "object");
    ObjectNode properties = node.putObject("properties");
    ArrayNode required = JSON.arrayNode();
    for (Shape.Slot slot : Shape.of(type).slots()) {
      properties.set(slot.key(), property(type, slot));
      if (slot.presence() == Shape.Presence.REQUIRED) {
        required.add(slot.key());
      }
    }
    if (type == Field.class) {
      orLike(node, properties, required);
    } else if (!required.isEmpty()) {
      node.set("required", required);
    }
    return node.put("additionalProperties", false);
  }

  /** A field that is like another needs nothing of its own. */
  private void orLike(ObjectNode node, ObjectNode properties, ArrayNode required) {
    ObjectNode like = reference(Text.class);
    properties.set(
        "like",
        like.put("description", "Field from which every key that is not written is taken."));
    ArrayNode either = node.putArray("anyOf");
    either.addObject().set("required", JSON.arrayNode().add("like"));
    either.addObject().set("required", required);
  }

  private ObjectNode property(Class<?> type, Shape.Slot slot) {
    ObjectNode value =
        type == DefaultUnits.class ? unitWord(slot.key()) : of(slot.value(), slot.key());
    ObjectNode node = slot.presence() == Shape.Presence.REQUIRED ? value : JSON.objectNode();
    if (slot.presence() != Shape.Presence.REQUIRED) {
      node.putArray("anyOf").add(value).add(JSON.objectNode().put("type", "null"));
    }
    return node.put("description", doc(type, slot));
  }

  static String doc(Class<?> type, Shape.Slot slot) {
    Doc doc = type.getRecordComponents()[slot.index()].getAnnotation(Doc.class);
    return Objects.requireNonNull(doc, slot.key()).value();
  }

  private static ObjectNode unitWord(String key) {
    Dimension dimension = Dimension.valueOf(key.toUpperCase(Locale.ROOT));
    return JSON.objectNode().put("type", "string").put("pattern", SchemaPatterns.unit(dimension));
  }

  private ObjectNode of(Type type, String key) {
    if (type instanceof Class<?> plain) {
      ObjectNode reference = reference(plain);
      return plain == Count.class ? reference.put("minimum", Ranges.leastCount(key)) : reference;
    }
    ParameterizedType generic = (ParameterizedType) type;
    Type argument = generic.getActualTypeArguments()[0];
    if (generic.getRawType() == Choice.class) {
      return words((Class<?>) argument);
    }
    boolean list = generic.getRawType() == java.util.List.class;
    ObjectNode node = JSON.objectNode().put("type", list ? "array" : "object");
    if (list && !Ranges.mayBeEmpty(key)) {
      node.put("minItems", 1);
    }
    return node.set(list ? "items" : "additionalProperties", of(argument, key));
  }

  private static ObjectNode words(Class<?> type) {
    ObjectNode node = JSON.objectNode();
    ArrayNode words = node.putArray("enum");
    for (Object constant : type.getEnumConstants()) {
      String word = Choice.word((Enum<?>) constant);
      words.add(word);
      Words.wholeNumber(word).ifPresent(words::add);
    }
    return node;
  }

  private ObjectNode value(Class<?> type) {
    if (type == Text.class) {
      ObjectNode node = JSON.objectNode();
      node.putArray("type").add("string").add("number").add("boolean");
      return node;
    }
    if (type == Count.class) {
      ObjectNode node = JSON.objectNode();
      node.putArray("type").add("integer").add("string");
      return node.put("maximum", Words.LARGEST_COUNT).put("pattern", "^[0-9]{1,7}$");
    }
    if (type == Flag.class) {
      ObjectNode node = JSON.objectNode();
      node.putArray("enum").add("yes").add("no").add(true).add(false).add("true").add("false");
      return node;
    }
    if (type == Day.class) {
      return JSON.objectNode().put("type", "string").put("pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
    }
    return QuantitySchema.of(type, true);
  }
}
