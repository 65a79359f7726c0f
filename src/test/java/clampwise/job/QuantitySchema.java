package clampwise.job;

import clampwise.units.Dimension;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.Set;

/** Schemas of numbers with units and of pairs of them. */
final class QuantitySchema {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final Set<Class<?>> OF_LENGTHS =
      Set.of(Size.class, Spot.class, LengthRange.class, Quantity.Thickness.class);

  private QuantitySchema() {}

  /** The dimension of a type of values, if it has one whose unit a job can declare. */
  static Optional<Dimension> declarable(Class<?> type) {
    return OF_LENGTHS.contains(type)
        ? Optional.of(Dimension.LENGTH)
        : QuantityKind.all().stream()
            .filter(kind -> kind.type() == type)
            .<Dimension>map(QuantityKind::dimension)
            .filter(SchemaPatterns.WITH_DEFAULT::contains)
            .findFirst();
  }

  /**
   * The schema of a type of values.
   *
   * @param bare whether a number may stand without its unit, where a job can declare it
   */
  static ObjectNode of(Class<?> type, boolean bare) {
    if (type == Size.class) {
      return pair(SchemaPatterns.size(bare), Quantity.Length.class, bare);
    }
    if (type == Spot.class) {
      return pair(SchemaPatterns.spot(bare), Quantity.Offset.class, bare);
    }
    if (type == LengthRange.class) {
      return pair(SchemaPatterns.range(bare), Quantity.Length.class, bare);
    }
    if (type == Quantity.Thickness.class) {
      return scalar(SchemaPatterns.thickness(bare), bare);
    }
    return one(kind(type), bare);
  }

  private static QuantityKind<?> kind(Class<?> type) {
    return QuantityKind.all().stream().filter(k -> k.type() == type).findFirst().orElseThrow();
  }

  private static ObjectNode one(QuantityKind<?> kind, boolean bare) {
    boolean number = kind.dimension() == Dimension.NUMBER;
    boolean declared = bare && SchemaPatterns.WITH_DEFAULT.contains(kind.dimension());
    ObjectNode node = scalar(SchemaPatterns.of(kind, bare), number || declared);
    if (kind.least() >= 0 && (number || declared)) {
      node.put("minimum", 0);
    }
    return node.put("description", "Write " + kind.words() + ".");
  }

  private static ObjectNode scalar(String pattern, boolean number) {
    ObjectNode node = JSON.objectNode();
    if (number) {
      node.putArray("type").add("string").add("number");
    } else {
      node.put("type", "string");
    }
    return node.put("pattern", pattern);
  }

  private static ObjectNode pair(String pattern, Class<?> item, boolean bare) {
    ObjectNode node = JSON.objectNode();
    ArrayNode either = node.putArray("anyOf");
    either.add(scalar(pattern, false));
    ObjectNode list = either.addObject();
    list.put("type", "array").put("minItems", 2).put("maxItems", 2);
    list.set("items", of(item, bare));
    return node;
  }
}
