package clampwise.facts.loads;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The spacing along a line that a field allows in a wind zone, held against the one its loads
 * allow.
 *
 * @param field its name
 * @param zone wind zone
 * @param part seam clamp or rib bracket
 * @param combination the combination that governs
 * @param pressurePa net pressure of that combination [Pa]
 * @param pull whether it lifts or presses
 * @param writtenM spacing the field allows [m]
 * @param computedM spacing the loads allow [m]
 * @param pattern what carries the loads in seams, in words, where less does not
 */
public record AllowedSpacing(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    String zone,
    String part,
    String combination,
    double pressurePa,
    String pull,
    double writtenM,
    double computedM,
    Optional<String> pattern)
    implements Fact {

  @Override
  public String loadCase() {
    return combination;
  }
}
