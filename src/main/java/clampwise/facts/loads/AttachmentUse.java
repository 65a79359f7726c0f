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
 * The share of an attachment's strength that its governing load combination uses.
 *
 * @param field its field
 * @param attachment its name
 * @param part seam clamp or rib bracket
 * @param zone wind zone it lies in
 * @param pull {@code uplift} or {@code pressure}, whichever governs
 * @param combination the combination that governs
 * @param normalN force across the roof [N]
 * @param tributary the same by tributary width, in words, where it differs by more than a tenth
 * @param alongN force down the slope [N]
 * @param normalStrengthN what it may take that way across the roof [N]
 * @param alongStrengthN what it may take along the seam [N]
 * @param utilisation share used by both together [-]
 * @param most the share that may be used [-]
 * @param noteAbove the share from which a designer should look [-]
 * @param chain how the share was got
 * @param spacing what the loads of the zone allow along the lines, in words
 */
public record AttachmentUse(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    String attachment,
    String part,
    String zone,
    String pull,
    String combination,
    double normalN,
    Optional<String> tributary,
    double alongN,
    double normalStrengthN,
    double alongStrengthN,
    double utilisation,
    double most,
    double noteAbove,
    Optional<String> spacing,
    Optional<Chain> chain,
    Optional<Limit> limitFrom)
    implements Fact {

  @Override
  public String loadCase() {
    return combination;
  }
}
