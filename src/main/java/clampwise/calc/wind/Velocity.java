package clampwise.calc.wind;

import clampwise.calc.trail.Term;

/**
 * Velocity pressure at the height of a roof.
 *
 * @param pressurePa as the edition prints it: with the directionality factor in 7-16, without in
 *     7-22 [Pa]
 * @param directionality factor that the pressure equations still have to apply; 1 in 7-16
 */
public record Velocity(double pressurePa, double directionality) {

  /** The part of it that acts on a building, the same in both editions [Pa]. */
  public double loadPa() {
    return pressurePa * directionality;
  }

  /** It as a term. */
  public Term term() {
    return Term.pressure("q_h", "velocity pressure", pressurePa);
  }

  Term directionalityTerm() {
    return Term.number("K_d", "directionality factor", directionality);
  }
}
