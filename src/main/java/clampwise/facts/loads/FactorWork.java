package clampwise.facts.loads;

import clampwise.calc.combination.Combination;
import clampwise.calc.combination.PartialFactors;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.job.Site.LoadCode;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes the partial and combination factors of EN 1990 behind a combination, each with where it
 * comes from.
 *
 * @param site the field
 * @param combination the combination
 * @param design whether it is one of design values; characteristic ones have no partial factors
 */
record FactorWork(FieldSite site, Combination combination, boolean design) {

  private static final double SAME = 1e-9;
  private static final String VARIABLE = "gamma_Q";
  private static final String DEAD = "gamma_G_sup";
  private static final String LEAST_DEAD = "gamma_G_inf";

  /** Nothing under other standards, whose combinations are printed in them as they are. */
  void write(Work work) {
    if (site.code().filter(LoadCode.EN_1991::equals).isEmpty()) {
      return;
    }
    Work all = new Work(work.measure());
    PartialFactors factors = EurocodeAnnex.partial(site, all);
    List<String> used = used(factors);
    all.lines().stream().filter(line -> used.contains(line.result().symbol())).forEach(work::write);
    if (design) {
      products(factors, work);
    }
  }

  private List<String> used(PartialFactors factors) {
    List<String> used = new ArrayList<>();
    Combination.Factors own = combination.factors();
    if (design) {
      used.add(isSame(own.dead(), factors.deadUnfavourable()) ? DEAD : LEAST_DEAD);
    }
    if (design && own.snow() + own.wind() > 0) {
      used.add(VARIABLE);
    }
    if (accompanies(own.snow(), factors)) {
      used.add("psi_0_s");
    }
    if (accompanies(own.wind(), factors)) {
      used.add("psi_0_w");
    }
    return used;
  }

  private boolean accompanies(double factor, PartialFactors factors) {
    return factor > 0 && !isSame(factor, design ? factors.variable() : 1);
  }

  private static boolean isSame(double one, double other) {
    return Math.abs(one - other) < SAME;
  }

  private void products(PartialFactors factors, Work work) {
    Combination.Factors own = combination.factors();
    if (accompanies(own.snow(), factors)) {
      product(Term.number("f_S", "factor of snow that accompanies", own.snow()), "psi_0_s", work);
    }
    if (accompanies(own.wind(), factors)) {
      product(Term.number("f_W", "factor of wind that accompanies", own.wind()), "psi_0_w", work);
    }
  }

  private static void product(Term factor, String psi, Work work) {
    String formula = VARIABLE + "*" + psi;
    work.write(factor, formula, Source.STATICS, written(VARIABLE, work), written(psi, work));
  }

  private static Term written(String symbol, Work work) {
    return work.lines().stream()
        .map(Line::result)
        .filter(term -> term.symbol().equals(symbol))
        .findFirst()
        .orElseThrow();
  }
}
