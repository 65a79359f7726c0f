package clampwise.facts.loads;

import clampwise.calc.trail.Chain;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * What the attachments on a seam bring to a clip, held against what wind on the bare roof would
 * bring to the clips there, and to any clip of the plane.
 *
 * @param seam the seam, such as {@code seam 12}
 * @param zone wind zone of the clip
 * @param combination the combination with most uplift on the seam
 * @param clipM where the clip lies up the slope [m]
 * @param forceN pull on the clip from the attachments [N]
 * @param roofN most that wind on the bare roof brings to a clip of this seam in this zone, in the
 *     same combination [N]
 * @param mostZone wind zone of the clip of the plane that wind on the bare roof loads most
 * @param mostN what wind on the bare roof brings to that clip, in the same combination [N]
 * @param worseOnField whether some clip under the same field gets more than that
 * @param spread how the load may be spread, in words
 * @param chain how the pull was got
 */
public record ClipShare(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String seam,
    String zone,
    String combination,
    double clipM,
    double forceN,
    double roofN,
    String mostZone,
    double mostN,
    boolean worseOnField,
    String spread,
    Optional<Chain> chain)
    implements Fact {

  @Override
  public String loadCase() {
    return combination;
  }

  boolean isAboveAll() {
    return forceN > mostN;
  }

  /** The same beside a clip of its field that gets more than the bare roof brings to any. */
  ClipShare besideWorse() {
    return new ClipShare(
        subject,
        cause,
        at,
        shown,
        units,
        seam,
        zone,
        combination,
        clipM,
        forceN,
        roofN,
        mostZone,
        mostN,
        true,
        spread,
        chain);
  }
}
