package clampwise.catalogue;

import clampwise.MadeByBuild;
import clampwise.source.Node;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the limits of codes and practice that ship with the program. */
public final class LimitsReader {

  /** Plain numbers before angles: {@code 1/3} is a third, but {@code 2:12} a slope. */
  private static final List<Dimension> KINDS =
      List.of(
          Dimension.LENGTH,
          Dimension.AREA,
          Dimension.NUMBER,
          Dimension.ANGLE,
          Dimension.PRESSURE,
          Dimension.FORCE,
          Dimension.TEMPERATURE,
          Dimension.MASS,
          Dimension.VOLTAGE,
          Dimension.CURRENT,
          Dimension.RESISTANCE,
          Dimension.DURATION,
          Dimension.WIRE_SIZE);

  private LimitsReader() {}

  /** All limits of the shared data. */
  @MadeByBuild
  public static Limits read() {
    return read("limits.yaml", SharedData.text("limits.yaml"));
  }

  /** What fire codes and their local variants ask for, by rule set. */
  @MadeByBuild
  public static Limits fire() {
    return read("fire.yaml", SharedData.text("fire.yaml"));
  }

  /** What a take-off assumes of pallets, spares, crews and rails. */
  @MadeByBuild
  public static Limits takeoff() {
    return read("takeoff.yaml", SharedData.text("takeoff.yaml"));
  }

  static Limits read(String name, String text) {
    Node root =
        YamlReader.read(name, text, new Problems())
            .orElseThrow(() -> new IllegalStateException(name + " is not readable"));
    Map<String, Limit> limits = new LinkedHashMap<>();
    for (Node.Entry entry : ((Node.Mapping) root).entries()) {
      String key = entry.key().text();
      limits.put(key, limit(key, (Node.Mapping) entry.value()));
    }
    return new Limits(limits);
  }

  private static Limit limit(String key, Node.Mapping written) {
    Parsed.Value value = value(key, text(written, "value"));
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

  private static Parsed.Value value(String key, String text) {
    boolean slope = text.contains(":");
    for (Dimension kind : slope ? List.of(Dimension.ANGLE) : KINDS) {
      if (QuantityText.parse(text, kind, Optional.empty()) instanceof Parsed.Value value) {
        return value;
      }
    }
    throw new IllegalStateException("limit " + key + " has no readable value: " + text);
  }

  private static String text(Node.Mapping written, String key) {
    return written.get(key).map(node -> ((Node.Scalar) node).text()).orElse("");
  }
}
