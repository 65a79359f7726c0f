package clampwise.facts.loads;

import clampwise.calc.combination.Combination;
import clampwise.calc.statics.Demand;
import clampwise.calc.statics.LimitState;
import clampwise.calc.statics.Utilisation;
import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The spacing along an inner line that the loads of a wind zone allow, by tributary width and with
 * the force along the seam taken into account.
 *
 * @param <S> the limit state of loads and strengths
 */
final class ZoneSpacings<S extends LimitState> {

  private final FieldLoads loads;
  private final Strengths<S> strengths;

  ZoneSpacings(FieldLoads loads, Strengths<S> strengths) {
    this.loads = loads;
    this.strengths = strengths;
  }

  /**
   * What a zone allows.
   *
   * @param lengthM longest spacing [m]
   * @param pressurePa net pressure of the combination that governs [Pa]
   * @param pull whether it lifts or presses
   * @param combination its number
   */
  record Allowed(double lengthM, double pressurePa, String pull, int combination) {}

  /** A load across the roof with the force along the seam that comes with it [Pa]. */
  private record Load(int combination, boolean up, double acrossPa, double alongPa) {}

  /** The narrowest spacing of all modules of the field in a zone; nothing without any load. */
  Optional<Allowed> of(String zone) {
    Allowed least = null;
    for (PlacedModule module : loads.site().field().modules()) {
      ModuleLoad load = loads.of(module);
      if (load.place().zone().equals(zone)) {
        Optional<Allowed> own = narrowest(module, load);
        least = least == null || isNarrower(own, least) ? own.orElse(least) : least;
      }
    }
    return Optional.ofNullable(least);
  }

  private static boolean isNarrower(Optional<Allowed> one, Allowed other) {
    return one.filter(own -> own.lengthM < other.lengthM).isPresent();
  }

  private Optional<Allowed> narrowest(PlacedModule module, ModuleLoad load) {
    double depthM = module.upM() + loads.site().field().rowGapM();
    Allowed least = null;
    for (Load each : loads(load)) {
      Optional<Allowed> own = allowed(each, depthM);
      least = least == null || isNarrower(own, least) ? own.orElse(least) : least;
    }
    return Optional.ofNullable(least);
  }

  /** A metre of line uses a share of the strength, and the whole of it allows so many metres. */
  private Optional<Allowed> allowed(Load load, double depthM) {
    double perM = load.acrossPa * depthM;
    return Utilisation.of(
            new Demand<S>(load.up ? perM : -perM, load.alongPa * depthM),
            strengths.resistance(),
            strengths.interaction())
        .result()
        .map(
            used ->
                new Allowed(
                    1 / used.together(),
                    load.acrossPa,
                    load.up ? "uplift" : "pressure",
                    load.combination));
  }

  private List<Load> loads(ModuleLoad load) {
    List<Combination> combinations = loads.standard().combinations();
    List<Load> all = new ArrayList<>();
    for (int k = 0; k < combinations.size(); k++) {
      add(new Load(k, true, -load.upPa()[k], load.alongPa()[k]), combinations.get(k), all);
      add(new Load(k, false, load.downPa()[k], load.alongPa()[k]), combinations.get(k), all);
    }
    return all;
  }

  private void add(Load load, Combination combination, List<Load> all) {
    if (load.acrossPa > 0 && loads.isKnown(combination, load.up)) {
      all.add(load);
    }
  }
}
