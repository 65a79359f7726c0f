package clampwise.calc.wind;

import static clampwise.calc.AsceEdition.ASCE_7_16;
import static clampwise.calc.AsceEdition.ASCE_7_22;

import clampwise.calc.AsceEdition;
import clampwise.calc.Outcome;
import clampwise.calc.ZoneWidth.Roof;
import clampwise.calc.ZoneWidth.Shape;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import clampwise.catalogue.LimitsReader;
import clampwise.catalogue.WindCodes;
import clampwise.units.Units;
import java.util.Optional;

/** Worked cases are written in ft, psf and mph, as their sources print them. */
final class Cases {

  static final double FOOT_M = 0.3048;
  static final double INCH_M = 0.0254;

  /** The published cases take the exposure coefficient from its table. */
  static final WindCode CODE_16 = byTable(ASCE_7_16);

  static final WindCode CODE_22 = byTable(ASCE_7_22);

  private Cases() {}

  static WindCode code(AsceEdition edition) {
    return edition == ASCE_7_16 ? CODE_16 : CODE_22;
  }

  private static WindCode byTable(AsceEdition edition) {
    return WindCodes.read(edition, LimitsReader.read()).with(choices());
  }

  static WindChoices choices() {
    return WindChoices.usual().with(WindChoices.ExposureMethod.TABLE);
  }

  static Work work() {
    return new Work(Measure.IMPERIAL);
  }

  static double psf(double pressurePa) {
    return Units.PSF.fromSi(pressurePa);
  }

  static double pa(double psf) {
    return Units.PSF.toSi(psf);
  }

  static Patch patch(String zone, double areaSqFt) {
    return new Patch(zone, areaSqFt * FOOT_M * FOOT_M);
  }

  static WindSite site(double mph, Exposure exposure) {
    return WindSite.level(mph * 0.44704, exposure);
  }

  static WindSite site(double mph, Exposure exposure, double kzt, Optional<Double> ke) {
    return new WindSite(mph * 0.44704, exposure, kzt, ke, Optional.empty());
  }

  static Velocity velocity(WindCode code, WindSite site, double heightFt) {
    return of(VelocityPressure.of(code, site, heightFt * FOOT_M, work()));
  }

  static WindBuilding building(Shape shape, double degrees, double leastFt, double heightFt) {
    return WindBuilding.enclosed(
        new Roof(shape, Math.toRadians(degrees), leastFt * FOOT_M, heightFt * FOOT_M));
  }

  static <T> T of(Outcome<T> outcome) {
    if (outcome instanceof Outcome.NotApplicable<T> none) {
      throw new AssertionError(none.reason());
    }
    return outcome.result().orElseThrow();
  }

  static PanelSetup setup(double heightIn, double degrees, double gapIn, double edgeIn) {
    return new PanelSetup(
        Optional.of(heightIn * INCH_M),
        Optional.of(Math.toRadians(degrees)),
        Optional.of(gapIn * INCH_M),
        Optional.empty(),
        Optional.of(5 * FOOT_M),
        Optional.of(edgeIn * INCH_M));
  }

  /** A setup that meets every condition. */
  static PanelSetup good() {
    return setup(6, 0, 0.5, 36);
  }
}
