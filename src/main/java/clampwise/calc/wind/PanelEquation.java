package clampwise.calc.wind;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.List;

/** Pressure on panels parallel to the roof from its factors. */
public final class PanelEquation {

  private final Velocity velocity;
  private final PanelFactors factors;
  private final Work work;

  private PanelEquation(Velocity velocity, PanelFactors factors, Work work) {
    this.velocity = velocity;
    this.factors = factors;
    this.work = work;
  }

  /**
   * Design pressures of ASCE 7, Eq. 29.4-7: 7-16 p = q_h (GC_p) gamma_E gamma_a, 7-22 p = q_h K_d
   * (GC_p) gamma_E gamma_a, at least 16 psf (29.7). gamma_E is 1 for pressure toward the roof (from
   * memory); the rest second-hand. No internal pressure. Strength level.
   *
   * @param external coefficients of the roof zone at the panel's effective wind area [-]
   * @return design pressures [Pa]
   */
  public static Pressures of(
      WindCode code, Velocity velocity, Coefficients external, PanelFactors factors, Work work) {
    Table table = code.table("panel-edge-factor-down");
    double down = code.number("panel-edge-factor-down", "factor");
    Term downFactor = Term.number("gamma_E_down", "array edge factor, downward", down);
    work.given(downFactor, code.cite(table));
    PanelEquation equation = new PanelEquation(velocity, factors, work);
    Source source = code.clause("Eq. 29.4-7");
    double common = velocity.loadPa() * factors.equalisation();
    Pressures computed =
        new Pressures(
            common * external.positive() * down, common * external.negative() * factors.edge());
    equation.write(LeastPressure.pos(computed), external.positiveTerm(), downFactor, source);
    equation.write(
        LeastPressure.neg(computed), external.negativeTerm(), factors.edgeTerm(), source);
    return LeastPressure.of(code, "least-panel-pressure", computed, work);
  }

  private void write(Term result, Term external, Term edge, Source source) {
    List<Term> inputs = new ArrayList<>(List.of(velocity.term()));
    if (velocity.directionality() != 1) {
      inputs.add(velocity.directionalityTerm());
    }
    inputs.addAll(List.of(external, edge, factors.equalisationTerm()));
    String formula = String.join(" * ", inputs.stream().map(Term::symbol).toList());
    work.write(result, formula, source, inputs.toArray(Term[]::new));
  }
}
