package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/** Net pressures of roof components and cladding in a zone. */
public final class ZonePressure {

  private ZonePressure() {}

  /**
   * Design pressures of ASCE 7, Eq. 30.3-1: 7-16 p = q_h [(GC_p) - (GC_pi)], 7-22 p = q_h K_d
   * [(GC_p) - (GC_pi)], with the internal coefficient of table 26.13-1 in the worse direction and
   * at least 16 psf (30.2.2). For enclosed, partially open and partially enclosed buildings.
   * Second-hand. Strength level.
   *
   * @param velocity velocity pressure at height h [Pa]
   * @param patch zone name of the figure and effective wind area [m²]
   * @return design pressures [Pa], or why there are none
   */
  public static Outcome<Pressures> of(
      WindCode code, WindBuilding building, Velocity velocity, Patch patch, Work work) {
    if (building.enclosure() == Enclosure.OPEN) {
      return new NotApplicable<>(
          "open buildings take net coefficients, which are not part of this");
    }
    return ExternalCoefficient.of(code, building, patch, work)
        .then(external -> new Result<>(of(code, building.enclosure(), velocity, external, work)));
  }

  /**
   * The same from external coefficients that are already known, see {@link #of(WindCode,
   * WindBuilding, Velocity, Patch, Work)}.
   */
  public static Pressures of(
      WindCode code, Enclosure enclosure, Velocity velocity, Coefficients external, Work work) {
    Table table = code.table("internal-pressure");
    double gcpi = table.row("enclosure", enclosure.word()).orElseThrow().number("coefficient");
    Term internal = Term.number("GC_pi", "internal pressure coefficient", gcpi);
    work.given(internal, code.cite(table));
    Net net = new Net(velocity, internal, code.clause("Eq. 30.3-1"));
    double towardPa = velocity.loadPa() * (external.positive() + gcpi);
    double awayPa = velocity.loadPa() * (external.negative() - gcpi);
    Pressures computed = new Pressures(towardPa, awayPa);
    net.write(LeastPressure.pos(computed), external.positiveTerm(), "+", work);
    net.write(LeastPressure.neg(computed), external.negativeTerm(), "-", work);
    return LeastPressure.of(code, "least-cladding-pressure", computed, work);
  }

  private record Net(Velocity velocity, Term internal, Source source) {

    void write(Term result, Term external, String sign, Work work) {
      String bracket = " * (" + external.symbol() + " " + sign + " GC_pi)";
      Term q = velocity.term();
      Term kd = velocity.directionalityTerm();
      if (velocity.directionality() == 1) {
        work.write(result, "q_h" + bracket, source, q, external, internal);
      } else {
        work.write(result, "q_h * K_d" + bracket, source, q, kd, external, internal);
      }
    }
  }
}
