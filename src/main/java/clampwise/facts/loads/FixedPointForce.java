package clampwise.facts.loads;

import clampwise.calc.trail.Chain;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * All that pulls a panel run down the slope, held against what its fixed point may take.
 *
 * @param panel which panel, by the seams beside it
 * @param covering name of the covering
 * @param fixedAt where the run is fixed, if that is given
 * @param combination the combination with the largest force
 * @param arrayN from the attachments on its two seams, half of each seam's [N]
 * @param panelN from its own weight [N]
 * @param snowN from snow on it outside the array [N]
 * @param forceN all of it [N]
 * @param strengthN what the fixed point may take [N]
 * @param utilisation share used [-]
 * @param noteN the force above which a designer should look [N]
 * @param chain how the sum was got
 */
public record FixedPointForce(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String panel,
    String covering,
    Optional<String> fixedAt,
    String combination,
    double arrayN,
    double panelN,
    double snowN,
    double forceN,
    double strengthN,
    double utilisation,
    double noteN,
    Optional<Chain> chain)
    implements Fact {

  @Override
  public String loadCase() {
    return combination;
  }
}
