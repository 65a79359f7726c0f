package clampwise.calc.statics;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/**
 * A module edge on two clamps, in closed form.
 *
 * @param edgeM length of the edge [m]
 * @param leftM left clamp, from the left corner [m]
 * @param rightM right clamp, from the left corner [m]
 */
public record TwoClamps(double edgeM, double leftM, double rightM) {

  private static final Source SOURCE =
      Source.of("statics", "beam overhanging two supports, even load", "worked out");

  /**
   * Reactions, moments and tributary widths under an even load.
   *
   * <p>R₂ = w L (L/2 - a)/(b - a), R₁ = w L - R₂; moments over the clamps -w a²/2 and -w (L -
   * b)²/2, greatest between them R₁²/2w - R₁ a where the shear is zero between the clamps. Handbook
   * formulas of beams with overhangs; holds for any two clamps on the edge.
   *
   * @param loadNPerM load of the edge [N/m], positive toward the clamps
   * @return both reactions [N]; a negative one pries
   */
  public Outcome<List<Term>> show(double loadNPerM, Work work) {
    Beam beam = new Beam(0, edgeM, new double[] {leftM, rightM});
    return beam.under(loadNPerM)
        .then(forces -> new Outcome.Result<>(lines(forces, loadNPerM, work)));
  }

  private List<Term> lines(BeamForces forces, double loadNPerM, Work work) {
    Term w = Term.lineLoad("w", "load of the edge", loadNPerM);
    Term edge = Term.length("L", "length of the edge", edgeM);
    Term left = Term.length("a", "left clamp from the left corner", leftM);
    Term right = Term.length("b", "right clamp from the left corner", rightM);
    Term second = Term.force("R_2", "reaction of the right clamp", forces.reactionsN()[1]);
    Term first = Term.force("R_1", "reaction of the left clamp", forces.reactionsN()[0]);
    write(second, "w*L*(L/2-a)/(b-a)", work, w, edge, left, right);
    write(first, "w*L-R_2", work, w, edge, second);
    Term overLeft = Term.moment("M_1", "moment over the left clamp", forces.supportMomentsNm()[0]);
    Term overRight =
        Term.moment("M_2", "moment over the right clamp", forces.supportMomentsNm()[1]);
    work.write(overLeft, "-(w*a^2)/2", SOURCE, w, left);
    work.write(overRight, "-(w*(L-b)^2)/2", SOURCE, w, edge, right);
    Term between = Term.moment("M", "greatest moment between", forces.spanMomentsNm()[0]);
    double crestM = first.si() / loadNPerM;
    if (crestM > leftM && crestM < rightM) {
      work.write(between, "R_1^2/(2*w)-R_1*a", SOURCE, first, w, left);
    } else {
      work.write(between, "max(M_1,M_2)", SOURCE, overLeft, overRight);
    }
    widths(work, left, right, edge);
    return List.of(first, second);
  }

  private static void write(Term reaction, String formula, Work work, Term... inputs) {
    String note = reaction.si() < 0 ? "The clamp has to pull: prying." : "";
    work.write(new Line(reaction, formula, List.of(inputs), SOURCE, note));
  }

  private void widths(Work work, Term left, Term right, Term edge) {
    double[] widths = Tributary.widthsM(0, edgeM, leftM, rightM);
    Source practice = Source.of("practice", "tributary width", "common practice, no source");
    Term first = Term.length("t_1", "tributary width of the left clamp, to compare", widths[0]);
    Term second = Term.length("t_2", "tributary width of the right clamp, to compare", widths[1]);
    work.write(first, "(a+b)/2", practice, left, right);
    work.write(second, "L-(a+b)/2", practice, edge, left, right);
  }
}
