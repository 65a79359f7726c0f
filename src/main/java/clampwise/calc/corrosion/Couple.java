package clampwise.calc.corrosion;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;

/**
 * Two metals that touch, by their anodic indices.
 *
 * @param oneV index of the one [V]
 * @param otherV index of the other [V]
 */
public record Couple(double oneV, double otherV) {

  private static final double STEPS_PER_VOLT = 1e6;

  /**
   * Difference of the indices, rounded far below a hundredth of a volt so that a couple at its
   * limit is at its limit.
   *
   * <p>Handbook table 2.4: a screening, not a rate of corrosion; metals bare and wet by turns.
   *
   * @return difference [V]
   */
  public double differenceV() {
    return Math.rint(Math.abs(oneV - otherV) * STEPS_PER_VOLT) / STEPS_PER_VOLT;
  }

  /** Whether the one is the nobler metal, at which the other goes. */
  public boolean isFirstNobler() {
    return oneV < otherV;
  }

  /** The difference, written into the work. */
  public Term show(Source source, Work work) {
    Term difference = volts("dV", "difference of the indices", differenceV());
    Term one = volts("V_1", "index of the one", oneV);
    Term other = volts("V_2", "index of the other", otherV);
    work.write(difference, "abs(V_1-V_2)", source, one, other);
    return difference;
  }

  /** The difference over the one allowed. */
  public static Term share(Term difference, Term allowed, Source source, Work work) {
    work.given(allowed, source);
    Term share = Term.number("U", "share of what is allowed", difference.si() / allowed.si());
    work.write(share, "dV/dV_a", Source.STATICS, difference, allowed);
    return share;
  }

  /**
   * Area of the nobler metal over that of the other: a small noble part on a large other one does
   * little, the reverse much.
   *
   * @param nobleM2 area of the nobler metal [m²]
   * @param activeM2 area of the other [m²]
   */
  public static Term areaRatio(double nobleM2, double activeM2, Work work) {
    Term noble = Term.area("A_n", "area of the nobler metal", nobleM2);
    Term active = Term.area("A_a", "area of the other metal", activeM2);
    Term ratio = Term.number("r_A", "area of the nobler metal over the other", nobleM2 / activeM2);
    work.write(ratio, "A_n/A_a", Source.STATICS, noble, active);
    return ratio;
  }

  /** A difference of potential. */
  public static Term volts(String symbol, String meaning, double v) {
    return new Term(symbol, meaning, v, Dimension.VOLTAGE);
  }
}
