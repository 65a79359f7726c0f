package clampwise.calc.statics;

import clampwise.calc.Outcome;
import java.util.List;
import java.util.Optional;

/**
 * A straight beam of one section on two or more supports that do not sink.
 *
 * <p>Frames on their clamps and seams on their clips are such beams. Supports push and pull alike;
 * a negative reaction says that one has to pull.
 *
 * @param fromM left end [m]
 * @param toM right end [m]
 * @param supportsM places of the supports from left to right [m]
 */
public record Beam(double fromM, double toM, double[] supportsM) {

  private static final int LEAST_SUPPORTS = 2;

  /**
   * Reactions and moments under an even load over the whole length.
   *
   * @param loadNPerM load toward the supports [N/m]
   */
  public Outcome<BeamForces> under(double loadNPerM) {
    return under(List.of(new BeamLoad.Even(fromM, toM, loadNPerM)));
  }

  /**
   * Reactions and moments under any loads: by equilibrium on two supports, else by the stiffness
   * method with the turns over the supports as unknowns, whose matrix has three diagonals; time and
   * memory grow with the number of supports and loads.
   *
   * <p>Source: statics and beam theory (Euler-Bernoulli, constant stiffness). Not applicable to
   * fewer than two supports, supports off the beam or out of order, and loads off the beam.
   *
   * @param loads loads toward the supports, in any order; they may overlap
   * @return reactions [N] and moments [N m]
   */
  public Outcome<BeamForces> under(List<BeamLoad> loads) {
    Optional<String> fault = fault(loads);
    return fault.isPresent()
        ? new Outcome.NotApplicable<>(fault.get())
        : new Outcome.Result<>(new Bays(this, loads).forces());
  }

  private Optional<String> fault(List<BeamLoad> loads) {
    if (supportsM.length < LEAST_SUPPORTS) {
      return Optional.of("a beam on fewer than two supports tips");
    }
    if (supportsM[0] < fromM || supportsM[supportsM.length - 1] > toM) {
      return Optional.of("a support lies past the end of the beam");
    }
    for (int i = 1; i < supportsM.length; i++) {
      if (!(supportsM[i] > supportsM[i - 1])) {
        return Optional.of("the supports are not in order from left to right");
      }
    }
    boolean off = loads.stream().anyMatch(l -> l.startM() < fromM || l.endM() > toM);
    return off ? Optional.of("a load lies past the end of the beam") : Optional.empty();
  }
}
