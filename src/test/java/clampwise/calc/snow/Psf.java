package clampwise.calc.snow;

import static clampwise.calc.Shipped.work;

import clampwise.calc.AsceEdition;
import clampwise.calc.Shipped;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.Optional;

/** The units in which the snow cases are published. */
final class Psf {

  static final AsceEdition OLD = AsceEdition.ASCE_7_16;
  static final AsceEdition NEW = AsceEdition.ASCE_7_22;

  private Psf() {}

  static double pa(double psf) {
    return Units.PSF.toSi(psf);
  }

  static double psf(double pa) {
    return Units.PSF.fromSi(pa);
  }

  static double m(double feet) {
    return Unit.FOOT.toSi(feet);
  }

  static double feet(double m) {
    return Unit.FOOT.fromSi(m);
  }

  static double pcf(double newtonPerM3) {
    return Units.PCF.fromSi(newtonPerM3);
  }

  /** Slope of a rise in 12. */
  static double rise(double inches) {
    return Math.atan(inches / 12);
  }

  static SnowBasis basis(AsceEdition edition, double groundPsf, Risk risk) {
    return SnowBasis.of(Shipped.snow(edition), pa(groundPsf), risk, Optional.empty(), work());
  }

  static SnowBasis windy(double groundPsf, double winterWind) {
    return SnowBasis.of(Shipped.snow(NEW), pa(groundPsf), Risk.II, Optional.of(winterWind), work());
  }

  static SlopeFactor.Surface slippery() {
    return new SlopeFactor.Surface(true, false, Optional.of(30.0), false);
  }

  static SlopeFactor.Surface rough() {
    return new SlopeFactor.Surface(false, false, Optional.empty(), false);
  }
}
