package clampwise.facts.loads;

import clampwise.calc.AsceEdition;
import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.calc.snow.Risk;
import clampwise.calc.snow.RoofSnow;
import clampwise.calc.snow.SlopeFactor;
import clampwise.calc.snow.SnowBasis;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Building;
import clampwise.job.Building.RoofShape;
import clampwise.job.Flag;
import clampwise.job.Loads;
import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Pressure;
import clampwise.job.Site;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;

/**
 * Snow on a field after ASCE 7-16 and 7-22. That the array carries the snow of its roof is a
 * documented assumption; the standards have no rule for panels parallel to a roof.
 */
final class AsceSnow implements FieldSnow {

  /** More than any condition on slippery roofs asks for [ft²·h·°F/Btu]. */
  private static final double WELL_INSULATED = 100;

  private final FieldSite asked;
  private final AsceEdition edition;
  private final Envelope plane;
  private final RoofSnow snow;
  private final Optional<Outcome<HigherRoofSnow>> higher;

  private AsceSnow(FieldSite asked, AsceEdition edition) {
    this.asked = asked;
    this.edition = edition;
    this.plane = asked.plane().outline().orElseThrow().getEnvelopeInternal();
    Work work = Work.unread();
    this.snow = snow(work);
    this.higher = higher(snow, work);
  }

  /** Snow on a field, or what is missing. */
  static Outcome<FieldSnow> of(FieldSite asked, AsceEdition edition) {
    Optional<String> missing = missing(asked);
    if (missing.isPresent()) {
      return new NotApplicable<>(missing.get());
    }
    AsceSnow snow = new AsceSnow(asked, edition);
    return snow.snow
        .missing()
        .or(snow::higherMissing)
        .<Outcome<FieldSnow>>map(NotApplicable::new)
        .orElseGet(() -> new Result<>(snow));
  }

  private static Optional<String> missing(FieldSite asked) {
    if (asked.site(Site::groundSnow).isEmpty()) {
      return Optional.of(asked.missing("the ground snow load of the site", "site", "ground-snow"));
    }
    if (asked.site(Site::riskCategory).isEmpty()) {
      return Optional.of(
          asked.missing("the risk category of the building", "site", "risk-category"));
    }
    if (asked.snow(Loads.Snow::exposureFactor).isEmpty()) {
      return Optional.of(ofSnow(asked, "the exposure factor of the snow load", "exposure-factor"));
    }
    if (asked.snow(Loads.Snow::thermalFactor).isEmpty()) {
      return Optional.of(ofSnow(asked, "the thermal factor of the snow load", "thermal-factor"));
    }
    if (asked.roof().shape().isEmpty()) {
      return Optional.of(asked.missing("the roof shape of the building", "building", "roof"));
    }
    if (asked.slopeRad().isEmpty()) {
      return Optional.of(asked.slopeMissing());
    }
    return asked.plane().outline().isEmpty()
        ? Optional.of(asked.plane().reading().outlineUnknown())
        : asked.lost("what the snow load asks about the roof", "loads", "snow");
  }

  private static String ofSnow(FieldSite asked, String what, String key) {
    return asked.missing(what, "loads", "snow", key);
  }

  @Override
  public double planPa(PlacedModule module) {
    double ownPa = snow.largestPa(fromRidgeM(module));
    return higher
        .flatMap(Outcome::result)
        .map(added -> Math.max(ownPa, added.planPa(module)))
        .orElse(ownPa);
  }

  @Override
  public Optional<SlopeSnow> slopeSnow() {
    SlopeFactor.Surface bare =
        new SlopeFactor.Surface(true, false, Optional.of(WELL_INSULATED), false);
    double thermal = asked.snow(Loads.Snow::thermalFactor).map(Factor::value).orElseThrow();
    double slopeRad = asked.slopeRad().orElseThrow();
    double factor =
        SlopeFactor.of(basis(Work.unread()).tables(), slopeRad, thermal, bare, Work.unread());
    return Optional.of(new SlopeSnow(snow.slopeFactor(), factor));
  }

  @Override
  public Term show(PlacedModule module, Work work) {
    RoofSnow shown = snow(work);
    Optional<HigherRoofSnow> added = higher(shown, work).flatMap(Outcome::result);
    Term own = ShownCases.write(shown, fromRidgeM(module), work);
    return added.map(more -> more.show(module, own, work)).orElse(own);
  }

  private Optional<Outcome<HigherRoofSnow>> higher(RoofSnow roof, Work work) {
    return new RoofStep(asked.plane())
        .higherRoof(asked.job())
        .map(higherRoof -> HigherRoofSnow.of(asked, higherRoof, basis(Work.unread()), roof, work));
  }

  private Optional<String> higherMissing() {
    return higher
        .filter(NotApplicable.class::isInstance)
        .map(none -> ((NotApplicable<HigherRoofSnow>) none).reason());
  }

  /** Plan distance of the module's upper edge from the ridge. */
  private double fromRidgeM(PlacedModule module) {
    return Snap.m(Math.max(0, plane.getMaxY() - module.topM()) * planPerSlope());
  }

  private double planPerSlope() {
    return Math.cos(asked.slopeRad().orElseThrow());
  }

  private SnowBasis basis(Work work) {
    return SnowBasis.of(
        asked.layout().catalogue().codes().snow(edition),
        asked.site(Site::groundSnow).map(Pressure::pa).orElseThrow(),
        Risk.valueOf(asked.site(Site::riskCategory).orElseThrow().value().name()),
        asked.snow(Loads.Snow::winterWind).map(Factor::value),
        work);
  }

  private RoofSnow snow(Work work) {
    SnowBasis basis = basis(work);
    RoofSnow.Factors factors =
        new RoofSnow.Factors(
            asked.snow(Loads.Snow::exposureFactor).map(Factor::value).orElseThrow(),
            asked.snow(Loads.Snow::thermalFactor).map(Factor::value).orElseThrow());
    return RoofSnow.of(basis, roof(), factors, work);
  }

  private RoofSnow.Roof roof() {
    return new RoofSnow.Roof(
        shape(asked.job().building().flatMap(Building::roof).orElseThrow().value()),
        asked.slopeRad().orElseThrow(),
        Snap.m(plane.getHeight() * planPerSlope()),
        says(Loads.Snow::simpleRafters),
        new SlopeFactor.Surface(
            true,
            !says(Loads.Snow::slidesOff),
            asked.snow(Loads.Snow::roofResistance).map(Factor::value),
            says(Loads.Snow::ventilated)));
  }

  private boolean says(Function<Loads.Snow, Optional<Flag>> flag) {
    return asked.snow(flag).filter(Flag::value).isPresent();
  }

  private static RoofSnow.Shape shape(RoofShape shape) {
    return switch (shape) {
      case GABLE, HIP -> RoofSnow.Shape.RIDGED;
      case MONOSLOPE -> RoofSnow.Shape.MONOSLOPE;
      case FLAT -> RoofSnow.Shape.FLAT;
    };
  }
}
