package clampwise.rulebook;

import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.source.Node;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The limits that ship with the program. */
final class SharedLimits {
  private SharedLimits() {}

  static Limits read() {
    try {
      String text = Files.readString(Path.of("shared/limits.yaml"));
      Node root = YamlReader.read("limits.yaml", text, new Problems()).orElseThrow();
      Map<String, Limit> limits = new HashMap<>();
      for (Node.Entry entry : ((Node.Mapping) root).entries()) {
        String key = entry.key().text();
        limits.put(key, limit(key, (Node.Mapping) entry.value()));
      }
      return new Limits(limits);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Limit limit(String key, Node.Mapping written) {
    Parsed.Value value =
        Stream.of(Dimension.LENGTH, Dimension.ANGLE, Dimension.NUMBER)
            .map(kind -> QuantityText.parse(text(written, "value"), kind, Optional.empty()))
            .filter(Parsed.Value.class::isInstance)
            .map(Parsed.Value.class::cast)
            .findFirst()
            .orElseThrow();
    return new Limit(
        key,
        value.si(),
        value.unit(),
        text(written, "document"),
        text(written, "edition"),
        text(written, "clause"),
        text(written, "obtained"),
        text(written, "validity"));
  }

  private static String text(Node.Mapping written, String key) {
    return written.get(key).map(node -> ((Node.Scalar) node).text()).orElse("");
  }
}
