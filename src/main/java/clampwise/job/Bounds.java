package clampwise.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What numbers under a key may be, where that is less than any quantity of their kind.
 *
 * @param type the kind of quantity that is meant
 * @param least smallest value in SI
 * @param most largest value in SI
 * @param only the values between which one chooses; empty for all between least and most
 * @param words the allowed values in words
 */
record Bounds(
    Class<? extends Quantity> type, double least, double most, List<Double> only, String words) {

  private static final double NOISE = 1e-9;

  private static final Map<String, Bounds> BY_KEY =
      Map.ofEntries(
          Map.entry("edge-factor", oneOf("1 or 1.5", 1.0, 1.5)),
          Map.entry("equalisation-end", oneOf("0.40 or 0.45", 0.40, 0.45)),
          Map.entry("equalisation-factor", factor(0, 1)),
          Map.entry("slope-factor", factor(0, 1)),
          Map.entry("topographic-factor", factor(1, 4)),
          Map.entry("exposure-factor", factor(0.5, 1.5)),
          Map.entry("thermal-factor", factor(0.5, 1.5)),
          Map.entry("winter-wind", factor(0, 1)),
          Map.entry("direction-factor", factor(0.7, 1)),
          Map.entry("season-factor", factor(0.6, 1)),
          Map.entry("terrain-factor", factor(0.1, 0.4)),
          Map.entry("air-density", factor(0.9, 1.5)),
          Map.entry("turbulence-factor", factor(0.5, 1.5)),
          Map.entry("dead-unfavourable", factor(1, 1.5)),
          Map.entry("dead-favourable", factor(0, 1)),
          Map.entry("variable", factor(1, 2)),
          Map.entry("psi-snow", factor(0, 1)),
          Map.entry("psi-wind", factor(0, 1)),
          Map.entry("spares", share()),
          Map.entry("clamps", share()),
          Map.entry("roof-coverage", share()),
          Map.entry(
              "wind-speed",
              new Bounds(Quantity.Speed.class, 1, 200, List.of(), "a speed from 1 to 200 m/s")),
          Map.entry("elevation", length(6000, "a height from 0 to 6000 m")),
          Map.entry("mean-roof-height", length(500, "a height from 0 to 500 m")),
          Map.entry("eave-height", length(500, "a height from 0 to 500 m")),
          Map.entry("frame-height", length(0.3, "a height from 0 to 300 mm")),
          Map.entry("pitch", length(3, "a length from 10 mm to 3 m")),
          Map.entry(
              "ground-snow",
              new Bounds(
                  Quantity.Pressure.class, 0, 50_000, List.of(), "a pressure from 0 to 50 kPa")));

  /** The bounds of numbers under a key, if it has its own. */
  static Optional<Bounds> of(String key, Class<? extends Quantity> type) {
    return Optional.ofNullable(BY_KEY.get(key)).filter(bounds -> bounds.type == type);
  }

  boolean hold(double si) {
    return only.isEmpty()
        ? si >= least - NOISE && si <= most + NOISE
        : only.stream().anyMatch(value -> Math.abs(value - si) < NOISE);
  }

  private static Bounds factor(double least, double most) {
    String words = "a number from " + text(least) + " to " + text(most);
    return new Bounds(Quantity.Factor.class, least, most, List.of(), words);
  }

  private static Bounds length(double mostM, String words) {
    return new Bounds(Quantity.Length.class, 0, mostM, List.of(), words);
  }

  private static Bounds share() {
    String words = "a share from 0 to 100 %, such as 3 %";
    return new Bounds(Quantity.Factor.class, 0, 1, List.of(), words);
  }

  private static String text(double value) {
    return value == Math.rint(value) ? Integer.toString((int) value) : Double.toString(value);
  }

  private static Bounds oneOf(String words, double one, double other) {
    return new Bounds(Quantity.Factor.class, one, other, List.of(one, other), words);
  }
}
