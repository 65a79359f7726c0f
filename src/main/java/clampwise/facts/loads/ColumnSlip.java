package clampwise.facts.loads;

import clampwise.calc.trail.Chain;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The force down the slope of a column of modules, held against what all its attachments may take
 * along their seams together.
 *
 * @param field its field
 * @param column its number
 * @param combination the combination with the largest force down the slope
 * @param attachments how many hold it
 * @param demandN dead load and snow of the column down the slope [N]
 * @param strengthN what its attachments may take along the seams together [N]
 * @param utilisation share used [-]
 * @param most the share that may be used [-]
 * @param noteAbove the share from which a designer should look [-]
 * @param more how many attachments more would do
 * @param chain how the share was got
 */
public record ColumnSlip(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    int column,
    String combination,
    int attachments,
    double demandN,
    double strengthN,
    double utilisation,
    double most,
    double noteAbove,
    int more,
    Optional<Chain> chain,
    Optional<Limit> limitFrom)
    implements Fact {

  @Override
  public String loadCase() {
    return combination;
  }
}
