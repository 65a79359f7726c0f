package clampwise.calc.wind;

import clampwise.calc.trail.Term;
import java.util.List;

/**
 * External pressure coefficients of a place on a roof.
 *
 * @param positive toward the roof [-]
 * @param negative away from it, below 0 [-]
 */
public record Coefficients(double positive, double negative) {

  /** Both as terms. */
  public List<Term> terms() {
    return List.of(positiveTerm(), negativeTerm());
  }

  Term positiveTerm() {
    return Term.number("GC_p_pos", "external coefficient toward the roof", positive);
  }

  Term negativeTerm() {
    return Term.number("GC_p_neg", "external coefficient away from the roof", negative);
  }
}
