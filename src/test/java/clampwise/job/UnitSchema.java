package clampwise.job;

import clampwise.units.Dimension;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Optional;

/**
 * Asks for the unit of every number of a dimension whose unit the job does not declare: of each
 * record only the keys that lead to such numbers.
 */
final class UnitSchema {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private final ObjectNode definitions;

  UnitSchema(ObjectNode definitions) {
    this.definitions = definitions;
  }

  ArrayNode conditions() {
    ArrayNode all = JSON.arrayNode();
    for (Dimension dimension : Dimension.values()) {
      if (SchemaPatterns.WITH_DEFAULT.contains(dimension)) {
        ObjectNode one = all.addObject();
        one.set("if", declared(Choice.word(dimension)));
        one.put("then", true);
        one.set("else", of(Job.class, dimension).orElseThrow());
      }
    }
    return all;
  }

  private static ObjectNode declared(String dimension) {
    ObjectNode units = JSON.objectNode().put("type", "object");
    units.putObject("properties").putObject(dimension).put("type", "string");
    units.putArray("required").add(dimension);
    ObjectNode job = JSON.objectNode();
    job.putObject("properties").set("units", units);
    job.putArray("required").add("units");
    return job;
  }

  private Optional<ObjectNode> of(Type type, Dimension dimension) {
    if (type instanceof ParameterizedType generic) {
      return generic.getRawType() == Choice.class ? Optional.empty() : items(generic, dimension);
    }
    Class<?> plain = (Class<?>) type;
    if (JobSchema.isRecordOfKeys(plain)) {
      return record(plain, dimension);
    }
    return QuantitySchema.declarable(plain)
        .filter(dimension::equals)
        .map(own -> reference(JobSchema.name(plain) + "-with-unit", orNothing(plain)));
  }

  private Optional<ObjectNode> items(ParameterizedType generic, Dimension dimension) {
    String key = generic.getRawType() == List.class ? "items" : "additionalProperties";
    return of(generic.getActualTypeArguments()[0], dimension)
        .map(inner -> JSON.objectNode().set(key, inner));
  }

  private Optional<ObjectNode> record(Class<?> type, Dimension dimension) {
    ObjectNode properties = JSON.objectNode();
    for (Shape.Slot slot : Shape.of(type).slots()) {
      of(slot.value(), dimension).ifPresent(value -> properties.set(slot.key(), value));
    }
    String name = JobSchema.name(type) + "-with-" + Choice.word(dimension) + "-units";
    return properties.isEmpty()
        ? Optional.empty()
        : Optional.of(reference(name, JSON.objectNode().set("properties", properties)));
  }

  private static ObjectNode orNothing(Class<?> type) {
    ObjectNode either = JSON.objectNode();
    either
        .putArray("anyOf")
        .add(QuantitySchema.of(type, false))
        .add(JSON.objectNode().put("type", "null"));
    return either;
  }

  private ObjectNode reference(String name, ObjectNode definition) {
    definitions.set(name, definition);
    return JSON.objectNode().put("$ref", "#/$defs/" + name);
  }
}
