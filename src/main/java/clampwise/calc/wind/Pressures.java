package clampwise.calc.wind;

import clampwise.calc.trail.Term;
import java.util.List;

/**
 * Design pressures of a place, at strength level.
 *
 * @param towardPa toward the roof, positive [Pa]
 * @param awayPa away from it, negative [Pa]
 */
public record Pressures(double towardPa, double awayPa) {

  /** Both as terms. */
  public List<Term> terms() {
    return List.of(towardTerm(towardPa), awayTerm(awayPa));
  }

  static Term towardTerm(double pressurePa) {
    return Term.pressure("p_toward", "design pressure toward the roof", pressurePa);
  }

  static Term awayTerm(double pressurePa) {
    return Term.pressure("p_away", "design pressure away from the roof", pressurePa);
  }
}
