package clampwise.calc.electrical;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;

/** Voltage of modules in series on the coldest morning, and how many of them a limit allows. */
public final class ColdString {

  private static final double NOISE = 1e-9;

  private ColdString() {}

  /**
   * Voltage of one module: V = Voc k.
   *
   * @param voc rated open-circuit voltage [V]
   * @param factor of {@link ColdFactor} [-]
   * @return voltage [V]
   */
  public static Term ofModule(Term voc, Term factor, Work work) {
    Term each = volts("V_m", "voltage of a module in the cold", voc.si() * factor.si());
    work.write(each, voc.symbol() + "*" + factor.symbol(), Source.STATICS, voc, factor);
    return each;
  }

  /**
   * Voltage of a string: V = N V_m.
   *
   * @param each of {@link #ofModule} [V]
   * @param inSeries modules in series
   * @return voltage [V]
   */
  public static Term ofString(Term each, int inSeries, Work work) {
    Term count = Term.number("N", "modules in series", inSeries);
    Term whole = volts("V_s", "voltage of the string in the cold", inSeries * each.si());
    work.write(whole, "N*" + each.symbol(), Source.STATICS, count, each);
    return whole;
  }

  /**
   * Most modules in series below a limit: the whole ones in V_lim / V_m.
   *
   * @param limit highest voltage allowed [V]
   * @return modules in series
   */
  public static Term most(Term each, Term limit, Work work) {
    Term share = Term.number("n", "modules that reach the limit", limit.si() / each.si());
    work.write(share, limit.symbol() + "/" + each.symbol(), Source.STATICS, limit, each);
    Term whole = Term.number("N_max", "most modules in series", most(each.si(), limit.si()));
    work.write(Line.given(whole, Source.STATICS, "The whole modules in n."));
    return whole;
  }

  /** Most modules in series. */
  public static int most(double eachV, double limitV) {
    return (int) Math.floor(limitV / eachV + NOISE);
  }

  /** A voltage. */
  public static Term volts(String symbol, String meaning, double v) {
    return new Term(symbol, meaning, v, Dimension.VOLTAGE);
  }
}
