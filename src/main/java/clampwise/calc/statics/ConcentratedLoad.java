package clampwise.calc.statics;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/**
 * A person's weight in the middle of a panel's span, judged by a load test of the panel.
 *
 * @param spanM span between supports [m]
 * @param testedN test load in the middle of the same span [N]
 * @param sagM deflection under the test load [m]
 */
public record ConcentratedLoad(double spanM, double testedN, double sagM) {

  /**
   * Sag under the load, in proportion to the test, and its share of the span over a limit.
   *
   * <p>Elastic panel on a simple span; the limit is span over {@code most}. Holds up to the tested
   * load.
   *
   * @param loadN the load [N]
   * @param most number by which the span is divided
   * @return sag over its limit; above 1 the panel is too soft
   */
  public Term show(double loadN, double most, Source source, Work work) {
    Term span = Term.length("L", "span between supports", spanM);
    Term sag = Term.length("f", "sag under the load", sagM * loadN / testedN);
    work.write(
        sag,
        "f_t*P/P_t",
        Source.of("statics", "elastic panel: sag grows with the load", "worked out"),
        Term.length("f_t", "sag in the test", sagM),
        Term.force("P", "concentrated load", loadN),
        Term.force("P_t", "load of the test", testedN));
    Term limit = Term.length("f_1", "greatest sag", spanM / most);
    work.write(limit, "L/n", source, span, Term.number("n", "part of the span", most));
    Term share = Term.number("U", "sag over its limit", sag.si() / limit.si());
    String note = share.si() > 1 ? "Softer than the limit: use walk pads." : "";
    work.write(new Line(share, "f/f_1", List.of(sag, limit), Source.STATICS, note));
    return share;
  }
}
