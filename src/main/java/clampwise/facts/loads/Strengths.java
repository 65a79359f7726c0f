package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.combination.Method;
import clampwise.calc.statics.Interaction;
import clampwise.calc.statics.LimitState;
import clampwise.calc.statics.Resistance;
import clampwise.calc.statics.Strength;
import clampwise.calc.statics.TestedLoad;
import clampwise.calc.statics.TestedLoad.Meaning;
import clampwise.calc.trail.Work;
import clampwise.catalogue.SheetThickness;
import clampwise.catalogue.TestedRows;
import clampwise.job.Panel;
import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Force;
import clampwise.job.RoofAttachment;
import clampwise.job.Tested;
import clampwise.job.Text;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a seam clamp or rib bracket may take on a covering: the test on this profile, metal and
 * substrate whose sheet is the thickest that is no thicker than the roof's.
 *
 * @param <S> the limit state of its strengths
 * @param row the test
 * @param resistance its strengths
 * @param interaction how both directions add up
 */
record Strengths<S extends LimitState>(
    Tested row, Resistance<S> resistance, Interaction interaction) {

  /** Turns the load of a test into a strength of one limit state. */
  @FunctionalInterface
  interface Conversion<S extends LimitState> {
    Outcome<Strength<S>> of(TestedLoad load, String direction, Work work);
  }

  /** What the test of a part leaves open: each direction, and the reason it is not checked. */
  Map<String, String> unstated(Text part) {
    Map<String, String> open = new LinkedHashMap<>();
    unstated("away from the roof", "up", resistance.up(), part, open);
    unstated("toward the roof", "down", resistance.down(), part, open);
    unstated("along the seam", "along", resistance.slope(), part, open);
    return open;
  }

  private static <S extends LimitState> void unstated(
      String way, String key, Optional<Strength<S>> strength, Text part, Map<String, String> open) {
    if (strength.isEmpty()) {
      open.put(way, "the test of " + part + " states no load " + way + " (" + key + ")");
    }
  }

  /** The test that holds for a part on a covering of known metal and thickness, if any does. */
  static Outcome<Tested> row(Text name, RoofAttachment part, Panel panel) {
    return TestedRows.holdingFor(panel, part)
        .filter(row -> isOnProfile(row, panel))
        .max(Comparator.comparingDouble(Strengths::thicknessM))
        .<Outcome<Tested>>map(Result::new)
        .orElseGet(
            () -> new NotApplicable<>("no test of " + name + " holds for this sheet (tested)"));
  }

  private static boolean isOnProfile(Tested row, Panel panel) {
    return row.profiles().isEmpty()
        || panel.profile().isEmpty()
        || row.profiles().stream()
            .anyMatch(profile -> profile.value().equals(panel.profile().get().value()));
  }

  private static double thicknessM(Tested row) {
    return row.thickness()
        .flatMap(thickness -> SheetThickness.baseM(thickness, row.metal().value()))
        .orElse(0.0);
  }

  /** The strengths of a test, or why its loads cannot be turned into them. */
  static <S extends LimitState> Outcome<Strengths<S>> of(
      Text name, Tested row, Method method, Conversion<S> conversion, Work work) {
    if (row.loadsAre().isEmpty()) {
      return new NotApplicable<>(
          "whether the loads of "
              + name
              + " are allowable, ultimate or design is not given (loads-are)");
    }
    Meaning meaning = meaning(row);
    Optional<Double> factor =
        (method == Method.ASD ? row.safetyFactor() : row.resistanceFactor()).map(Factor::value);
    Reader<S> reader = new Reader<>(meaning, factor, conversion, work);
    return reader
        .read(row.up(), "up")
        .then(
            up ->
                reader
                    .read(row.down(), "down")
                    .then(
                        down ->
                            reader
                                .read(row.along(), "along")
                                .then(
                                    along ->
                                        new Result<>(
                                            new Strengths<>(
                                                row,
                                                new Resistance<>(up, down, along),
                                                interaction(row))))));
  }

  static Meaning meaning(Tested row) {
    return switch (row.loadsAre().orElseThrow().value()) {
      case ALLOWABLE -> Meaning.ALLOWABLE;
      case ULTIMATE -> Meaning.ULTIMATE;
      case RESISTANCE -> Meaning.DESIGN;
    };
  }

  private static Interaction interaction(Tested row) {
    return row.interaction()
        .map(given -> Interaction.valueOf(given.value().name()))
        .orElse(Interaction.LINEAR);
  }

  private record Reader<S extends LimitState>(
      Meaning meaning, Optional<Double> factor, Conversion<S> conversion, Work work) {

    /** The strength of a direction; none if the test does not state its load. */
    Outcome<Optional<Strength<S>>> read(Optional<Force> load, String direction) {
      return load.isEmpty()
          ? new Result<>(Optional.empty())
          : conversion
              .of(new TestedLoad(load.get().n(), meaning, factor), direction, work)
              .then(strength -> new Result<>(Optional.of(strength)));
    }
  }
}
