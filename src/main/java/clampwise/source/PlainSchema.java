package clampwise.source;

import java.util.Map;
import org.snakeyaml.engine.v2.api.ConstructNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.resolver.ScalarResolver;
import org.snakeyaml.engine.v2.schema.Schema;

/**
 * The schema of a reader that takes every value as text until it is bound. The build puts it in the
 * place of the parser's own, whose patterns for numbers and dates nobody asks.
 */
public final class PlainSchema implements Schema {

  @Override
  public ScalarResolver getScalarResolver() {
    return (value, implicit) -> Tag.STR;
  }

  @Override
  public Map<Tag, ConstructNode> getSchemaTagConstructors() {
    return Map.of();
  }
}
