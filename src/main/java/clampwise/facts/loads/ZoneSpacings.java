package clampwise.facts.loads;

import clampwise.calc.statics.LimitState;
import clampwise.calc.statics.Resistance;
import clampwise.calc.statics.SpacingAllowed;
import clampwise.calc.statics.Strength;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Panel;
import clampwise.job.Quantity.Length;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The spacing along an inner line that the uplift of a wind zone allows, by tributary width and
 * with the force along the seam taken into account.
 */
final class ZoneSpacings {

  private static final double SINGLE = 1;
  private static final Allowed NO_LOAD =
      new Allowed(new SpacingAllowed(Double.POSITIVE_INFINITY, 0), 0, "", 0, "");

  private final FieldLoads loads;

  ZoneSpacings(FieldLoads loads) {
    this.loads = loads;
  }

  /**
   * What a zone allows.
   *
   * @param spacing as length and in seams
   * @param pressurePa net pressure of the combination that governs [Pa]
   * @param pull whether it lifts or presses
   * @param combination its number
   * @param pattern the spacing in words
   */
  record Allowed(
      SpacingAllowed spacing, double pressurePa, String pull, int combination, String pattern) {}

  /** The narrowest spacing of all modules of the field in a zone; nothing without any load. */
  <S extends LimitState> Optional<Allowed> of(String zone, Strengths<S> strengths) {
    Optional<Double> pitchM = loads.site().plane().panel().flatMap(Panel::pitch).map(Length::m);
    if (pitchM.isEmpty()) {
      return Optional.empty();
    }
    Allowed least = null;
    for (PlacedModule module : loads.site().field().modules()) {
      ModuleLoad load = loads.of(module);
      if (load.place().zone().equals(zone)) {
        Allowed own = narrowest(module, load, strengths.resistance(), pitchM.get());
        least = least == null || isNarrower(own, least) ? own : least;
      }
    }
    return Optional.ofNullable(least).filter(a -> !Double.isInfinite(a.spacing.lengthM()));
  }

  private static boolean isNarrower(Allowed one, Allowed other) {
    return one.spacing.lengthM() < other.spacing.lengthM();
  }

  /** A load across the roof with the force along the seam that comes with it [Pa]. */
  private record Load(int combination, boolean up, double acrossPa, double alongPa) {}

  private <S extends LimitState> Allowed narrowest(
      PlacedModule module, ModuleLoad load, Resistance<S> resistance, double pitchM) {
    double depthM = module.upM() + loads.site().field().rowGapM();
    Load worst = null;
    double leastM = Double.POSITIVE_INFINITY;
    for (Load each : loads(load)) {
      double strengthN = strengthN(each.up ? resistance.up() : resistance.down());
      double share = each.acrossPa / strengthN + each.alongPa / strengthN(resistance.slope());
      if (each.acrossPa > 0 && 1 / (share * depthM) < leastM) {
        leastM = 1 / (share * depthM);
        worst = each;
      }
    }
    return worst == null ? NO_LOAD : allowed(worst, leastM, depthM, pitchM);
  }

  private Allowed allowed(Load worst, double leastM, double depthM, double pitchM) {
    SpacingAllowed.Zone zone = new SpacingAllowed.Zone(worst.acrossPa, depthM, SINGLE);
    double reducedN = leastM * worst.acrossPa * depthM;
    SpacingAllowed allowed = SpacingAllowed.of(zone, reducedN, pitchM);
    String pull = worst.up ? "uplift" : "pressure";
    return new Allowed(allowed, worst.acrossPa, pull, worst.combination, pattern(allowed, pitchM));
  }

  private List<Load> loads(ModuleLoad load) {
    List<Load> all = new ArrayList<>();
    for (int k = 0; k < load.upPa().length; k++) {
      all.add(new Load(k, true, -load.upPa()[k], load.alongPa()[k]));
      if (loads.snowUnknown().isEmpty()) {
        all.add(new Load(k, false, load.downPa()[k], load.alongPa()[k]));
      }
    }
    return all;
  }

  private static <S extends LimitState> double strengthN(Optional<Strength<S>> strength) {
    return strength.map(Strength::forceN).orElse(Double.NaN);
  }

  private String pattern(SpacingAllowed allowed, double pitchM) {
    Unit unit =
        loads
            .site()
            .plane()
            .panel()
            .flatMap(Panel::pitch)
            .map(Length::unit)
            .orElse(Unit.MILLIMETRE);
    return switch (allowed.everySeams()) {
      case 0 -> "a stronger clamp or a second line: even every seam is too few";
      case 1 -> "every seam";
      default ->
          "every "
              + ordinal(allowed.everySeams())
              + " seam ("
              + QuantityPrint.text(allowed.everySeams() * pitchM, unit)
              + ") or closer";
    };
  }

  private static String ordinal(int n) {
    return n == 2 ? "second" : n == 3 ? "third" : n == 4 ? "fourth" : n + "th";
  }
}
