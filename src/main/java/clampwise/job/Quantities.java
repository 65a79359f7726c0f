package clampwise.job;

import clampwise.source.Node;
import clampwise.source.Span;
import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads numbers with units, ranges, spots and sizes. */
final class Quantities {

  private static final double THICKEST_M = 0.01;
  private static final double HIGHEST_GAUGE = 50;
  private static final String THICKNESS = "a sheet thickness, such as 24 ga or 0.6 mm";
  private static final String RANGE = "a range of lengths, such as 30 mm to 40 mm";
  private static final String SPOT =
      "a spot: along the eave and up the slope, such as [6 ft, 3 ft]";
  private static final String SIZE = "a size: along the eave x up the slope, such as 30 m x 9 m";

  private Quantities() {}

  static <Q extends Quantity> ValueDeserializer<Q> of(QuantityKind<Q> kind) {
    return ValueDeserializer.ofScalar(
        kind.words(), (scalar, key, reading) -> read(kind, scalar, key, reading));
  }

  static ValueDeserializer<Quantity.Thickness> thickness() {
    return ValueDeserializer.ofScalar(
        THICKNESS, (scalar, key, reading) -> thickness(scalar, reading).orElse(null));
  }

  private static Optional<Quantity.Thickness> thickness(Node.Scalar scalar, Reading reading) {
    Parsed parsed = QuantityText.parseThickness(scalar.text(), unit(reading));
    if (parsed instanceof Parsed.Fault
        && reading.defaults().keepFromReading(scalar.text(), Dimension.LENGTH)) {
      return Optional.empty();
    }
    return value(parsed, scalar, reading)
        .map(value -> new Quantity.Thickness(value.si(), value.unit(), scalar.at()))
        .filter(thickness -> isThin(thickness, scalar, reading));
  }

  static ValueDeserializer<LengthRange> lengthRange() {
    return new ValueDeserializer<>(
        (node, key, reading) ->
            two(node, RANGE, reading, Pair::ofRange)
                .flatMap(pair -> range(pair, node.at(), reading))
                .orElse(null));
  }

  static ValueDeserializer<Spot> spot() {
    return new ValueDeserializer<>(
        (node, key, reading) ->
            two(node, SPOT, reading, Pair::ofSpot)
                .flatMap(pair -> spot(pair, node.at(), reading))
                .orElse(null));
  }

  static ValueDeserializer<Size> size() {
    return new ValueDeserializer<>(
        (node, key, reading) ->
            two(node, SIZE, reading, Pair::ofSize)
                .flatMap(pair -> size(pair, node.at(), reading))
                .orElse(null));
  }

  private static <Q extends Quantity> @Nullable Q read(
      QuantityKind<Q> kind, Node.Scalar scalar, String key, Reading reading) {
    Q value = read(kind, scalar, Ranges.isPositive(key), reading);
    Optional<Bounds> bounds = Bounds.of(key, kind.type());
    if (value != null && bounds.filter(own -> !own.hold(value.si())).isPresent()) {
      reading.problem(scalar.at(), Reading.quoted(scalar.text()), bounds.get().words());
      return null;
    }
    return value;
  }

  private static <Q extends Quantity> @Nullable Q read(
      QuantityKind<Q> kind, Node.Scalar scalar, boolean positive, Reading reading) {
    DeclaredUnits defaults = reading.defaults();
    Parsed parsed =
        QuantityText.parse(scalar.text(), kind.dimension(), defaults.unit(kind.dimension()));
    if (parsed instanceof Parsed.Fault
        && defaults.keepFromReading(scalar.text(), kind.dimension())) {
      return null;
    }
    return value(inWordsOf(kind, parsed), scalar, reading)
        .filter(value -> isInRange(kind, value.si(), positive, scalar, reading))
        .map(value -> kind.maker().make(value.si(), value.unit(), scalar.at()))
        .orElse(null);
  }

  /** Directions are angles too, but nobody writes them as a slope. */
  private static Parsed inWordsOf(QuantityKind<?> kind, Parsed parsed) {
    return kind.type() == Quantity.Azimuth.class && parsed instanceof Parsed.Fault fault
        ? new Parsed.Fault(fault.found(), kind.words())
        : parsed;
  }

  private static Optional<clampwise.units.Unit> unit(Reading reading) {
    return reading.defaults().unit(Dimension.LENGTH);
  }

  private static Optional<Parsed.Value> value(Parsed parsed, Node.Scalar scalar, Reading reading) {
    if (parsed instanceof Parsed.Value value && Double.isFinite(value.si())) {
      return Optional.of(value);
    }
    if (parsed instanceof Parsed.Fault fault) {
      reading.problem(scalar.at(), Reading.oneLine(fault.found()), fault.expected());
    } else {
      reading.problem(scalar.at(), Reading.quoted(scalar.text()), "a finite number");
    }
    return Optional.empty();
  }

  private static boolean isInRange(
      QuantityKind<?> kind, double si, boolean positive, Node.Scalar scalar, Reading reading) {
    boolean lengthNeeded = positive && kind.type() == Quantity.Length.class;
    boolean tooShort = lengthNeeded && si < Ranges.SHORTEST_M;
    if (si < kind.least() || si > kind.most() || tooShort) {
      String range = lengthNeeded ? "a length from 10 mm to 10000 m" : kind.range();
      reading.problem(scalar.at(), Reading.quoted(scalar.text()), range);
      return false;
    }
    return true;
  }

  private static boolean isThin(Quantity.Thickness thickness, Node.Scalar scalar, Reading reading) {
    double most = thickness.isGauge() ? HIGHEST_GAUGE : THICKEST_M;
    if (thickness.si() <= 0 || thickness.si() > most) {
      String expected = thickness.isGauge() ? "a gauge from 1 to 50" : "a thickness below 10 mm";
      reading.problem(scalar.at(), Reading.quoted(scalar.text()), expected);
      return false;
    }
    return true;
  }

  /** Splits a scalar in two texts. */
  private interface Split {
    Optional<Pair> split(Node.Scalar scalar);
  }

  private static Optional<Pair> two(Node node, String expected, Reading reading, Split split) {
    Optional<Pair> pair = Optional.empty();
    if (node instanceof Node.Sequence sequence) {
      pair = Pair.ofItems(sequence);
    } else if (node instanceof Node.Scalar scalar) {
      pair = split.split(scalar);
    }
    if (pair.isEmpty()) {
      reading.wrongShape(node, expected);
    }
    return pair;
  }

  private static Optional<LengthRange> range(Pair pair, Span at, Reading reading) {
    Quantity.Length min = read(QuantityKind.LENGTH, pair.first(), false, reading);
    Quantity.Length max = read(QuantityKind.LENGTH, pair.second(), false, reading);
    if (min == null || max == null) {
      return Optional.empty();
    }
    if (min.m() > max.m()) {
      reading.problem(at, "a range that ends below its start", "the smaller length first");
      return Optional.empty();
    }
    return Optional.of(new LengthRange(min, max, at));
  }

  private static Optional<Spot> spot(Pair pair, Span at, Reading reading) {
    Quantity.Offset along = read(QuantityKind.OFFSET, pair.first(), false, reading);
    Quantity.Offset up = read(QuantityKind.OFFSET, pair.second(), false, reading);
    return along == null || up == null ? Optional.empty() : Optional.of(new Spot(along, up, at));
  }

  private static Optional<Size> size(Pair pair, Span at, Reading reading) {
    Quantity.Length along = read(QuantityKind.LENGTH, pair.first(), true, reading);
    Quantity.Length up = read(QuantityKind.LENGTH, pair.second(), true, reading);
    return along == null || up == null ? Optional.empty() : Optional.of(new Size(along, up, at));
  }
}
