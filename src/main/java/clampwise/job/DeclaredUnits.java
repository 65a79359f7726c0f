package clampwise.job;

import clampwise.source.Node;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The units a job declares for numbers written without one.
 *
 * @param unreadable what it declares a unit for that does not exist
 */
record DeclaredUnits(Map<Dimension, Unit> units, Set<Dimension> unreadable) {

  /** Nothing is declared. */
  static final DeclaredUnits NONE = new DeclaredUnits(Map.of(), Set.of());

  private static final Map<String, Dimension> DIMENSIONS =
      Map.of(
          "length", Dimension.LENGTH,
          "angle", Dimension.ANGLE,
          "pressure", Dimension.PRESSURE,
          "force", Dimension.FORCE,
          "mass", Dimension.MASS);

  static DeclaredUnits of(Node.Mapping root, Problems problems) {
    DeclaredUnits declared =
        new DeclaredUnits(new EnumMap<>(Dimension.class), EnumSet.noneOf(Dimension.class));
    root.mapping("units")
        .ifPresent(
            written ->
                DIMENSIONS.forEach(
                    (key, dimension) ->
                        written
                            .get(key)
                            .filter(unit -> unit instanceof Node.Scalar && !unit.isEmpty())
                            .ifPresent(
                                unit ->
                                    declared.declare(dimension, (Node.Scalar) unit, problems))));
    return declared;
  }

  /** The unit of bare numbers of a dimension. */
  Optional<Unit> unit(Dimension dimension) {
    return Optional.ofNullable(units.get(dimension));
  }

  /** Whether a number without a unit would be readable if its declared unit were. */
  boolean keepFromReading(String text, Dimension dimension) {
    return unreadable.contains(dimension)
        && QuantityText.parse(text, dimension, Units.of(dimension).values().stream().findFirst())
            instanceof Parsed.Value;
  }

  private void declare(Dimension dimension, Node.Scalar word, Problems problems) {
    Parsed parsed = QuantityText.parse("1 " + word.text(), dimension, Optional.empty());
    if (parsed instanceof Parsed.Value value) {
      units.put(dimension, value.unit());
      return;
    }
    unreadable.add(dimension);
    problems.add(
        new Problem(
            word.at(),
            Reading.quoted(word.text()),
            "a unit of " + Choice.word(dimension),
            Units.nearest(dimension, word.text()).map(Unit::symbol)));
  }
}
