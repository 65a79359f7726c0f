package clampwise.calc.corrosion;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;
import java.util.List;

/**
 * Metal that the weather takes off a surface.
 *
 * @param firstYearM loss of the first year [m]
 * @param exponent time exponent b [-]
 * @param lawYears years for which the power law holds; a steady loss follows
 * @param source where exponent and law come from
 */
public record CorrosionLoss(double firstYearM, double exponent, double lawYears, Source source) {

  /** How loss goes on after the years of the power law. */
  public enum Later {
    STEADY,
    POWER
  }

  /**
   * Loss after some years: D = r t^b, and after the years of the law D = r (T^b + b T^(b-1) (t -
   * T)).
   *
   * <p>ISO 9224:2012, equations 1 and 3, exponents of table 2 [from memory]; flat specimens in the
   * open, rates of ISO 9223. The steady loss is the severe reading; handbook example 3.8 goes on
   * with the power law [computed].
   *
   * @param years time [yr]
   * @return loss [m]
   */
  public double lossM(double years, Later later) {
    return firstYearM * growth(years, later);
  }

  /**
   * Years until a coating is gone, the inverse of {@link #lossM}.
   *
   * @param coatingM thickness [m]
   * @return time [yr]
   */
  public double years(double coatingM, Later later) {
    double share = coatingM / firstYearM;
    double byLaw = Math.pow(share, 1 / exponent);
    boolean within = byLaw <= lawYears || later == Later.POWER;
    return within ? byLaw : lawYears + (share - Math.pow(lawYears, exponent)) / steady();
  }

  private double growth(double years, Later later) {
    boolean within = years <= lawYears || later == Later.POWER;
    return within
        ? Math.pow(years, exponent)
        : Math.pow(lawYears, exponent) + steady() * (years - lawYears);
  }

  private double steady() {
    return exponent * Math.pow(lawYears, exponent - 1);
  }

  /** The loss, written into the work. */
  public Term show(double years, Later later, Work work) {
    Term rate = coating("r_c", "loss of the first year", firstYearM);
    Term power = Term.number("b", "time exponent", exponent);
    Term time = Term.number("t", "years", years);
    Term loss = coating("D", "loss of metal", lossM(years, later));
    if (years <= lawYears || later == Later.POWER) {
      work.write(loss, "r_c*t^b", source, rate, time, power);
    } else {
      Term law = Term.number("t_l", "years of the power law", lawYears);
      String formula = "r_c*(t_l^b+b*t_l^(b-1)*(t-t_l))";
      work.write(new Line(loss, formula, List.of(rate, law, power, time), source, ""));
    }
    return loss;
  }

  /** A thickness of a coating. */
  public static Term coating(String symbol, String meaning, double m) {
    return new Term(symbol, meaning, m, Dimension.COATING);
  }
}
