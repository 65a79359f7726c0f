package clampwise.facts.loads;

import clampwise.calc.trail.Chain;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * What the attachments on a seam bring to its most loaded clip, held against what a clip may take.
 *
 * @param seam the seam, such as {@code seam 12}
 * @param covering name of the covering
 * @param combination the combination with most uplift on the seam
 * @param clipM where the clip lies up the slope [m]
 * @param forceN pull on the clip from the attachments [N]
 * @param strengthN what a clip may take [N]
 * @param utilisation share used [-]
 * @param noteN the pull above which a designer should look [N]
 * @param roof what wind on the bare roof brings to a clip there, in words
 * @param spread how the load may be spread, in words
 * @param chain how the pull was got
 */
public record ClipUse(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String seam,
    String covering,
    String combination,
    double clipM,
    double forceN,
    double strengthN,
    double utilisation,
    double noteN,
    Optional<String> roof,
    String spread,
    Optional<Chain> chain)
    implements Fact {

  @Override
  public String loadCase() {
    return combination;
  }
}
