package clampwise.calc.wind;

import clampwise.calc.trail.Term;

/**
 * Factors of the pressure on panels parallel to the roof.
 *
 * @param edge array edge factor for uplift
 * @param equalisation pressure equalisation factor
 */
public record PanelFactors(double edge, double equalisation) {

  /** The edge factor as a term. */
  public Term edgeTerm() {
    return Term.number("gamma_E", "array edge factor, uplift", edge);
  }

  /** The equalisation factor as a term. */
  public Term equalisationTerm() {
    return Term.number("gamma_a", "pressure equalisation factor", equalisation);
  }
}
