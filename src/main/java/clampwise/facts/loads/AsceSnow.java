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
import clampwise.calc.trail.Measure;
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

  private final FieldSite asked;
  private final AsceEdition edition;
  private final Envelope plane;
  private final RoofSnow snow;

  private AsceSnow(FieldSite asked, AsceEdition edition) {
    this.asked = asked;
    this.edition = edition;
    this.plane = asked.plane().outline().orElseThrow().getEnvelopeInternal();
    this.snow = snow(new Work(Measure.METRIC));
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
        .<Outcome<FieldSnow>>map(NotApplicable::new)
        .orElseGet(() -> new Result<>(snow));
  }

  private static Optional<String> missing(FieldSite asked) {
    if (asked.site(Site::groundSnow).isEmpty()) {
      return Optional.of("the ground snow load of the site is not given");
    }
    if (asked.site(Site::riskCategory).isEmpty()) {
      return Optional.of("the risk category of the building is not given");
    }
    if (asked.snow(Loads.Snow::exposureFactor).isEmpty()) {
      return Optional.of("the exposure factor of the snow load is not given");
    }
    if (asked.snow(Loads.Snow::thermalFactor).isEmpty()) {
      return Optional.of("the thermal factor of the snow load is not given");
    }
    if (asked.roof().shape().isEmpty()) {
      return Optional.of("the roof shape of the building is not given");
    }
    if (asked.slopeRad().isEmpty()) {
      return Optional.of("the slope of the plane is not given");
    }
    return asked.plane().outline().isEmpty()
        ? Optional.of(asked.plane().reading().outlineUnknown())
        : Optional.empty();
  }

  @Override
  public double planPa(PlacedModule module) {
    return snow.largestPa(fromRidgeM(module));
  }

  @Override
  public double show(PlacedModule module, Work work) {
    return snow(work).largestPa(fromRidgeM(module));
  }

  /** Plan distance of the module's upper edge from the ridge. */
  private double fromRidgeM(PlacedModule module) {
    return Snap.m(Math.max(0, plane.getMaxY() - module.topM()) * planPerSlope());
  }

  private double planPerSlope() {
    return Math.cos(asked.slopeRad().orElseThrow());
  }

  private RoofSnow snow(Work work) {
    SnowBasis basis =
        SnowBasis.of(
            asked.layout().catalogue().codes().snow(edition),
            asked.site(Site::groundSnow).map(Pressure::pa).orElseThrow(),
            Risk.valueOf(asked.site(Site::riskCategory).orElseThrow().value().name()),
            asked.snow(Loads.Snow::winterWind).map(Factor::value),
            work);
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
