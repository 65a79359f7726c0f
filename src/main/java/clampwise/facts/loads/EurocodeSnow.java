package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.en.EnDrift;
import clampwise.calc.en.EnSnow;
import clampwise.calc.en.EnTables;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Building.RoofShape;
import clampwise.job.Loads;
import clampwise.job.Loads.HigherRoof;
import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Pressure;
import clampwise.job.Quantity.Slope;
import clampwise.job.Site;
import java.util.Optional;

/**
 * Snow on a field after EN 1991-1-3. That the array carries the snow of its roof is a documented
 * assumption; the standard has no rule for modules parallel to a roof.
 */
final class EurocodeSnow implements FieldSnow {

  private static final double USUAL = 1;

  private final FieldSite asked;
  private final EnTables tables;
  private final RoofStep step;
  private final Optional<HigherRoof> higher;
  private final double evenPa;
  private final Optional<EnDrift> drift;

  private EurocodeSnow(FieldSite asked, EnTables tables, Work work) {
    this.asked = asked;
    this.tables = tables;
    this.step = new RoofStep(asked.plane());
    this.higher = step.higherRoof(asked.job());
    EnSnow.Site site = site(work);
    this.evenPa =
        EnSnow.of(tables, site, roof(), work)
            .result()
            .map(snow -> snow.governing().pa())
            .orElse(0.0);
    this.drift =
        higher.map(this::step).flatMap(known -> EnDrift.atStep(tables, site, known, work).result());
  }

  /** Snow on a field, or what is missing. */
  static Outcome<FieldSnow> of(FieldSite asked) {
    Optional<String> missing = missing(asked);
    if (missing.isPresent()) {
      return new NotApplicable<>(missing.get());
    }
    EnTables tables = asked.layout().catalogue().codes().snowOfEn();
    return new Result<>(new EurocodeSnow(asked, tables, Work.unread()));
  }

  private static Optional<String> missing(FieldSite asked) {
    if (asked.site(Site::groundSnow).isEmpty()) {
      return Optional.of(asked.missing("the ground snow load of the site", "site", "ground-snow"));
    }
    if (asked.roof().shape().isEmpty()) {
      return Optional.of(asked.missing("the roof shape of the building", "building", "roof"));
    }
    if (asked.slopeRad().isEmpty()) {
      return Optional.of(asked.slopeMissing());
    }
    if (asked.snow(Loads.Snow::thermalFactor).filter(ct -> ct.value() > USUAL).isPresent()) {
      return Optional.of("the thermal coefficient of EN 1991-1-3 is at most 1");
    }
    RoofStep step = new RoofStep(asked.plane());
    return asked
        .lost("what the snow load asks about the roof", "loads", "snow")
        .or(() -> step.higherRoof(asked.job()).flatMap(higher -> step.unknown()));
  }

  @Override
  public double planPa(PlacedModule module) {
    return Math.max(evenPa, driftPa(module).orElse(0.0));
  }

  private Optional<Double> driftPa(PlacedModule module) {
    return drift.map(fallen -> fallen.atPa(step.fromM(module)));
  }

  @Override
  public Term show(PlacedModule module, Work work) {
    EurocodeSnow shown = new EurocodeSnow(asked, tables, work);
    Term snow = Term.pressure("s", "snow on the module", shown.planPa(module));
    work.write(
        snow,
        drift.isPresent() ? "max(s_even,s_drift)" : "s_even",
        Source.of("en-1991-1-3", "5.3", "worked out"),
        shown.terms(module));
    return snow;
  }

  private Term[] terms(PlacedModule module) {
    Term even = Term.pressure("s_even", "even snow", evenPa);
    return driftPa(module)
        .map(pa -> new Term[] {even, Term.pressure("s_drift", "drift", pa)})
        .orElseGet(() -> new Term[] {even});
  }

  private EnSnow.Site site(Work work) {
    return new EnSnow.Site(
        asked.site(Site::groundSnow).map(Pressure::pa).orElseThrow(),
        factor("C_e", "exposure coefficient", asked.snow(Loads.Snow::exposureFactor), work),
        factor("C_t", "thermal coefficient", asked.snow(Loads.Snow::thermalFactor), work));
  }

  /** Both are 1 unless topography or loss of heat say otherwise (5.2; from memory). */
  private static double factor(String symbol, String meaning, Optional<Factor> given, Work work) {
    double value = given.map(Factor::value).orElse(USUAL);
    String note = given.isPresent() ? "given" : "assumption: the usual value, none given";
    return work.write(
        Line.given(
            Term.number(symbol, meaning, value),
            Source.of("en-1991-1-3", "5.2", "from memory"),
            note));
  }

  private EnSnow.Roof roof() {
    double slopeRad = asked.slopeRad().orElseThrow();
    Optional<Double> otherRad =
        isRidged()
            ? asked.snow(Loads.Snow::otherSlope).map(Slope::rad).or(() -> Optional.of(slopeRad))
            : Optional.empty();
    boolean slides = asked.snow(Loads.Snow::slidesOff).filter(flag -> flag.value()).isPresent();
    return new EnSnow.Roof(slopeRad, otherRad, !slides);
  }

  private boolean isRidged() {
    RoofShape shape = asked.roof().shape().orElseThrow();
    return shape == RoofShape.GABLE || shape == RoofShape.HIP;
  }

  private EnDrift.Step step(HigherRoof roof) {
    Optional<EnDrift.Upper> upper =
        roof.slope()
            .flatMap(
                slope -> roof.eaveToRidge().map(run -> new EnDrift.Upper(slope.rad(), run.m())));
    return new EnDrift.Step(roof.rise().m(), roof.length().m(), step.fetchM(), upper);
  }
}
