package clampwise.calc.wind;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/** Holds computed pressures against the least the standard allows. */
final class LeastPressure {

  private LeastPressure() {}

  /** Design pressures from computed ones, at least those of a table. */
  static Pressures of(WindCode code, String key, Pressures computed, Work work) {
    Table table = code.table(key);
    Source source = code.cite(table);
    double leastPa = code.number(key, "pressure");
    Term least = Term.pressure("p_min", "least design pressure", leastPa);
    double towardPa = Math.max(computed.towardPa(), leastPa);
    double awayPa = Math.min(computed.awayPa(), -leastPa);
    work.given(least, source);
    work.write(Pressures.towardTerm(towardPa), "max(p_pos, p_min)", source, pos(computed), least);
    work.write(Pressures.awayTerm(awayPa), "min(p_neg, -p_min)", source, neg(computed), least);
    return new Pressures(towardPa, awayPa);
  }

  static Term pos(Pressures computed) {
    return Term.pressure("p_pos", "computed pressure toward the roof", computed.towardPa());
  }

  static Term neg(Pressures computed) {
    return Term.pressure("p_neg", "computed pressure away from the roof", computed.awayPa());
  }
}
