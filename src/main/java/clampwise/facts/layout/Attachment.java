package clampwise.facts.layout;

import clampwise.job.Text;
import clampwise.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * An attachment at its place.
 *
 * @param name name on the drawing, unique in the job, such as {@code A.L2 seam 7} or {@code A point
 *     12}
 * @param line number of the line it lies on (1 is the lowest of its field), 0 if it is on none
 * @param alongM place along the eave [m]
 * @param upM place up the slope [m]
 * @param seam nearest seam, rib or crest, if there are any
 * @param offsetM distance from that seam's centre line [m]
 * @param nearestMinorRibM distance from the nearest minor rib [m], if there are any
 * @param part name of the seam clamp or rib bracket, if given
 * @param clamp name of the mid or end clamp on it, if given
 * @param kind whether it holds two modules, one or none
 * @param grips the modules it serves: the one below the line first
 * @param zone wind zone it lies in, the most severe if on a border
 * @param at where it was scheduled
 */
public record Attachment(
    String name,
    int line,
    double alongM,
    double upM,
    Optional<SeamLine> seam,
    double offsetM,
    Optional<Double> nearestMinorRibM,
    Optional<Text> part,
    Optional<Text> clamp,
    Kind kind,
    List<Grip> grips,
    Optional<ZoneArea> zone,
    Span at) {

  /** How many modules an attachment holds. */
  public enum Kind {
    MID,
    END,
    NONE
  }
}
