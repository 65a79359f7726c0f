package clampwise.facts.loads;

import clampwise.calc.AsceEdition;
import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.combination.Combination;
import clampwise.calc.combination.Combinations;
import clampwise.calc.combination.Method;
import clampwise.calc.combination.PartialFactors;
import clampwise.calc.statics.LimitState.Lrfd;
import clampwise.calc.statics.Strength;
import clampwise.calc.statics.TestedLoad;
import clampwise.calc.statics.TestedLoad.Meaning;
import clampwise.calc.trail.Work;
import clampwise.job.Loads;
import clampwise.job.Site.LoadCode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The standards of a site as they are applied to a field.
 *
 * @param words what its loads and strengths are called
 * @param method whether factored loads meet design strengths or service loads allowables
 * @param combinations combinations for attachments, each only once
 * @param service combinations of service loads, which the rating of a module is held against
 * @param wind wind on the field, or why it is not known
 * @param snow snow on the field, or why it is not known
 */
record Standard(
    StateWords words,
    Method method,
    List<Combination> combinations,
    List<Combination> service,
    Outcome<FieldWind> wind,
    Outcome<FieldSnow> snow) {

  /** The standards of a field, or what is missing. */
  static Outcome<Standard> of(FieldSite site) {
    if (site.code().isEmpty()) {
      return new NotApplicable<>(
          site.missing("the edition of the load standard", "site", "codes", "loads"));
    }
    Optional<String> lost = lost(site);
    if (lost.isPresent()) {
      return new NotApplicable<>(lost.get());
    }
    LoadCode code = site.code().get();
    return new Result<>(
        code == LoadCode.EN_1991 ? eurocode(site) : asce(site, AsceEdition.valueOf(code.name())));
  }

  private static Optional<String> lost(FieldSite site) {
    return site.lost("the method of the loads", "loads", "method")
        .or(() -> site.lost("whether clamps share an edge", "loads", "clamps-share-edge"))
        .or(() -> site.lost("what the national annex gives", "loads", "annex"));
  }

  /** Design values for attachments; modules are rated for characteristic values. */
  private static Standard eurocode(FieldSite site) {
    PartialFactors factors = EurocodeAnnex.partial(site, Work.unread());
    PartialFactors characteristic =
        new PartialFactors(1, 1, 1, factors.psiSnow(), factors.psiWind());
    return new Standard(
        StateWords.EUROCODE,
        Method.LRFD,
        distinct(Combinations.of(factors).all()),
        distinct(Combinations.of(characteristic).all()),
        EurocodeWind.of(site),
        site.onPlane().snow(() -> EurocodeSnow.of(site)));
  }

  /** How the load of a test becomes a design strength. */
  Strengths.Conversion<Lrfd> design() {
    return words.equals(StateWords.EUROCODE) ? Standard::resistance : TestedLoad::design;
  }

  private static Outcome<Strength<Lrfd>> resistance(TestedLoad load, String direction, Work work) {
    return load.meaning() == Meaning.ALLOWABLE
        ? new NotApplicable<>("an allowable load may not be held against design values of EN 1990")
        : load.design(direction, work);
  }

  private static Standard asce(FieldSite site, AsceEdition edition) {
    Method method =
        site.loads(Loads::method).map(m -> Method.valueOf(m.value().name())).orElse(Method.ASD);
    return new Standard(
        method == Method.ASD ? StateWords.ASD : StateWords.LRFD,
        method,
        combinations(site, edition, method),
        combinations(site, edition, Method.ASD),
        AsceWind.of(site, edition),
        site.onPlane().snow(() -> AsceSnow.of(site, edition)));
  }

  private static List<Combination> combinations(
      FieldSite site, AsceEdition edition, Method method) {
    return distinct(
        Combinations.of(site.layout().catalogue().codes().combinations(edition), method).all());
  }

  /** Those that differ in dead load, snow and wind: nothing else acts on an array. */
  private static List<Combination> distinct(List<Combination> all) {
    Set<List<Double>> seen = new HashSet<>();
    List<Combination> kept = new ArrayList<>();
    for (Combination each : all) {
      Combination.Factors factors = each.factors();
      if (factors.roofLive() == 0
          && factors.rain() == 0
          && seen.add(List.of(factors.dead(), factors.snow(), factors.wind()))) {
        kept.add(each);
      }
    }
    return kept;
  }
}
