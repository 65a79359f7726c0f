package clampwise.job;

import clampwise.source.Node;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import clampwise.units.Unit;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** The units a job declares for numbers written without one. */
final class DeclaredUnits {

  private static final Map<String, Dimension> DIMENSIONS =
      Map.of(
          "length", Dimension.LENGTH,
          "angle", Dimension.ANGLE,
          "pressure", Dimension.PRESSURE,
          "force", Dimension.FORCE,
          "mass", Dimension.MASS);

  private DeclaredUnits() {}

  static Map<Dimension, Unit> of(Node.Mapping root, Problems problems) {
    Map<Dimension, Unit> units = new EnumMap<>(Dimension.class);
    root.mapping("units")
        .ifPresent(
            declared ->
                DIMENSIONS.forEach(
                    (key, dimension) ->
                        declared
                            .get(key)
                            .flatMap(unit -> unit(unit, dimension, problems))
                            .ifPresent(unit -> units.put(dimension, unit))));
    return units;
  }

  private static Optional<Unit> unit(Node node, Dimension dimension, Problems problems) {
    if (!(node instanceof Node.Scalar word) || word.isEmpty()) {
      return Optional.empty();
    }
    Parsed parsed = QuantityText.parse("1 " + word.text(), dimension, Optional.empty());
    if (parsed instanceof Parsed.Value value) {
      return Optional.of(value.unit());
    }
    String expected = "a unit of " + Choice.word(dimension);
    problems.add(Problem.of(word.at(), Reading.quoted(word.text()), expected));
    return Optional.empty();
  }
}
