package clampwise.facts.loads;

import clampwise.calc.AsceEdition;
import clampwise.calc.EditionTables;
import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.snow.RoofSnow;
import clampwise.calc.snow.SlidingSnow;
import clampwise.calc.snow.SnowBasis;
import clampwise.calc.snow.StepDrift;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Flag;
import clampwise.job.Loads.HigherRoof;
import clampwise.job.Quantity.Length;
import java.util.Comparator;
import java.util.Optional;

/**
 * Snow that a higher roof blows or drops on the modules of a field. A module takes the load of its
 * point nearest to the step on its whole area: a documented assumption, on the severe side.
 *
 * @param site the field
 * @param tables tables of the edition
 * @param balancedPa balanced load of this roof, below drift and sliding snow [Pa]
 * @param drift drifts at the step, if there are any
 * @param sliding snow that slides from the higher roof, if it sheds any
 */
record HigherRoofSnow(
    FieldSite site,
    EditionTables tables,
    double balancedPa,
    Optional<StepDrift> drift,
    Optional<SlidingSnow> sliding) {

  /** Snow from the higher roof of a job, or what is missing of it. */
  static Outcome<HigherRoofSnow> of(
      FieldSite site, HigherRoof higher, SnowBasis basis, RoofSnow roof, Work work) {
    Optional<String> missing = missing(site, higher, basis);
    if (missing.isPresent()) {
      return new NotApplicable<>(missing.get());
    }
    StepDrift.Step step =
        new StepDrift.Step(
            higher.rise().m(),
            Optional.of(higher.length().m()),
            Optional.of(new RoofStep(site.plane()).fetchM()),
            roof.balancedPa());
    return new Result<>(
        new HigherRoofSnow(
            site,
            basis.tables(),
            roof.balancedPa(),
            StepDrift.of(basis, step, work).result(),
            higher.eaveToRidge().flatMap(run -> sliding(higher, run, basis, roof, work))));
  }

  private static Optional<String> missing(FieldSite site, HigherRoof higher, SnowBasis basis) {
    Optional<String> place = new RoofStep(site.plane()).unknown();
    if (place.isPresent()) {
      return place;
    }
    if (higher.eaveToRidge().isPresent() && higher.slope().isEmpty()) {
      return Optional.of("the slope of the higher roof is not given");
    }
    return needsWind(basis) && basis.winterWind().isEmpty()
        ? Optional.of(
            site.missing(
                "the winter wind parameter of the snow load", "loads", "snow", "winter-wind"))
        : Optional.empty();
  }

  private static boolean needsWind(SnowBasis basis) {
    return basis.tables().edition() == AsceEdition.ASCE_7_22;
  }

  /** The higher roof's own flat snow load is taken as this roof's: a documented assumption. */
  private static Optional<SlidingSnow> sliding(
      HigherRoof higher, Length run, SnowBasis basis, RoofSnow roof, Work work) {
    boolean slippery = higher.slippery().filter(Flag::value).isPresent();
    SlidingSnow.Upper upper =
        new SlidingSnow.Upper(roof.flatPa(), run.m(), higher.slope().orElseThrow().rad(), slippery);
    return SlidingSnow.of(basis.tables(), upper, work).result();
  }

  /** Balanced load with what comes from the higher roof, on the horizontal projection [Pa]. */
  double planPa(PlacedModule module) {
    double fromStepM = new RoofStep(site.plane()).fromM(module);
    return balancedPa + Math.max(driftPa(fromStepM), slidingPa(fromStepM));
  }

  /** The largest of this and the roof's own cases, with its lines. */
  Term show(PlacedModule module, Term roof, Work work) {
    double fromStepM = new RoofStep(site.plane()).fromM(module);
    Term x = Term.length("x", "plan distance from the step", fromStepM);
    work.write(
        Line.given(
            x,
            tables.source("step"),
            "nearest point of the module, which takes the load there on all of its area"));
    Term drift = Term.pressure("p_x", "drift at the module", driftPa(fromStepM));
    Term slide = Term.pressure("p_sx", "sliding snow at the module", slidingPa(fromStepM));
    drift(fromStepM).ifPresentOrElse(d -> showDrift(d, drift, x, work), () -> none(drift, work));
    work.write(Line.given(slide, tables.source("sliding"), "over its width from the upper eave"));
    Term snow = Term.pressure("p_snow", "snow on the module", Math.max(roof.si(), planPa(module)));
    work.write(
        snow,
        "max(p_roof,p_s+p_x,p_s+p_sx)",
        tables.source("step"),
        roof,
        Term.pressure("p_s", "balanced snow load", balancedPa),
        drift,
        slide);
    return snow;
  }

  private void showDrift(StepDrift.Drift shape, Term drift, Term x, Work work) {
    work.write(
        drift,
        "p_d*max(0,1-x/w)",
        tables.source("step"),
        Term.pressure("p_d", "load of the " + shape.name() + " drift at the wall", shape.peakPa()),
        x,
        Term.length("w", "width of the drift", shape.widthM()));
  }

  private void none(Term drift, Work work) {
    work.write(Line.given(drift, tables.source("step"), "no drift"));
  }

  private Optional<StepDrift.Drift> drift(double fromStepM) {
    return drift
        .flatMap(
            all -> all.drifts().stream().max(Comparator.comparingDouble(d -> d.atPa(fromStepM))))
        .filter(shape -> shape.widthM() > 0);
  }

  private double driftPa(double fromStepM) {
    return drift(fromStepM).map(shape -> shape.atPa(fromStepM)).orElse(0.0);
  }

  private double slidingPa(double fromStepM) {
    return sliding.map(snow -> snow.atPa(fromStepM)).orElse(0.0);
  }
}
