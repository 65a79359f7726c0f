package clampwise.calc.statics;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.List;

/**
 * A module edge on its clamps, from the pressure on the module to the force of each clamp.
 *
 * @param edgeM length of the supported edge [m]
 * @param depthM distance between the two supported edges [m]
 * @param clampsM clamps from the left corner, in order [m]
 */
public record ModuleOnClamps(double edgeM, double depthM, double[] clampsM) {

  /**
   * Half of the module's load as an even load on the edge, then statics with overhangs on two
   * clamps or a continuous beam on more; a line between two modules adds both.
   *
   * <p>Source: statics and beam theory; an even pressure, a frame of constant stiffness. Not
   * applicable to one clamp or clamps off the edge.
   *
   * @param pressurePa net pressure [Pa], positive toward the clamps, whichever way it acts
   * @param modules modules on the line: 1 at its end, 2 on an inner line with equal modules
   * @return force of each clamp [N]
   */
  public Outcome<List<Term>> show(double pressurePa, int modules, Work work) {
    double loadNPerM = ModuleEdge.loadNPerM(pressurePa, depthM);
    Beam beam = new Beam(0, edgeM, clampsM);
    return beam.under(loadNPerM)
        .then(
            forces -> {
              work.write(
                  Term.lineLoad("w", "load of the edge, half of the module's", loadNPerM),
                  "p*d/2",
                  Source.of("statics", "half to each supported edge", "worked out"),
                  Term.pressure("p", "net pressure", pressurePa),
                  Term.length("d", "distance of the supported edges", depthM));
              return reactions(beam, loadNPerM, work);
            })
        .then(reactions -> new Outcome.Result<>(onLine(reactions, modules, work)));
  }

  private Outcome<List<Term>> reactions(Beam beam, double loadNPerM, Work work) {
    return clampsM.length == 2
        ? new TwoClamps(edgeM, clampsM[0], clampsM[1]).show(loadNPerM, work)
        : BeamWork.show(beam, List.of(new BeamLoad.Even(0, edgeM, loadNPerM)), "", work);
  }

  private static List<Term> onLine(List<Term> reactions, int modules, Work work) {
    List<Term> forces = new ArrayList<>();
    Term count = Term.number("m", "modules on the line", modules);
    for (Term reaction : reactions) {
      int number = forces.size() + 1;
      double forceN = modules * reaction.si();
      Term force = Term.force("N_" + number, "force of clamp " + number, forceN);
      String note = forceN < 0 ? "The clamp has to pull: prying." : "";
      work.write(
          new Line(
              force, "m*" + reaction.symbol(), List.of(count, reaction), Source.STATICS, note));
      forces.add(force);
    }
    return forces;
  }
}
