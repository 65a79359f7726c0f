package clampwise.calc.corrosion;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/**
 * Zinc on both sides of a sheet.
 *
 * @param gramsPerM2 mass on both sides together [g/m²]
 */
public record ZincCoating(double gramsPerM2) {

  private static final double GRAMS_PER_KILOGRAM = 1000;

  /**
   * Thickness on one side: half of the mass over the density.
   *
   * @param densityKgM3 density of zinc [kg/m³]
   * @return thickness [m]
   */
  public double sideM(double densityKgM3) {
    return gramsPerM2 / GRAMS_PER_KILOGRAM / 2 / densityKgM3;
  }

  /** The thickness, written into the work. */
  public Term show(double densityKgM3, Source ofDensity, Work work) {
    Term mass = Term.number("m_z", "zinc on both sides, g/m²", gramsPerM2);
    Term density = Term.number("rho_z", "density of zinc, kg/m³", densityKgM3);
    work.given(density, ofDensity);
    Term side = CorrosionLoss.coating("c", "zinc on a side", sideM(densityKgM3));
    work.write(side, "m_z/2/rho_z*1000", Source.STATICS, mass, density);
    return side;
  }
}
