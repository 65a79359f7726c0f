package clampwise.facts.loads;

import clampwise.calc.trail.Chain;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The pressure on a module held against the design rating of the clamp-zone row that holds all its
 * clamps.
 *
 * @param module its name
 * @param type its module type
 * @param side side that is clamped
 * @param zone wind zone it lies in
 * @param direction {@code up} or {@code down}, whichever governs
 * @param combination the combination that governs
 * @param demandPa net pressure of service loads [Pa]
 * @param ratedPa design rating that way [Pa]
 * @param noteAbovePa pressure from which a designer should look [Pa]
 * @param rating how the rating came about: as stated, or a test load over 1.5
 * @param stronger what would carry the pressure, where this does not
 * @param chain how demand and rating were got
 */
public record ModuleUse(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String module,
    String type,
    String side,
    String zone,
    String direction,
    String combination,
    double demandPa,
    double ratedPa,
    double noteAbovePa,
    String rating,
    String stronger,
    Optional<Chain> chain,
    Optional<Limit> limitFrom)
    implements Fact {

  @Override
  public String loadCase() {
    return combination;
  }
}
