package clampwise.facts.bonding;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Whether an island of frames that are bonded to each other is bonded to ground.
 *
 * @param subject the island, named after its first frame
 * @param at where the jumpers of its field are written
 * @param shown counts have no unit
 * @param field field of its first frame
 * @param module its first frame
 * @param frames number of its frames
 * @param lugs lugs on its frames
 * @param lugsAtLeast lugs it needs
 * @param jumper the jumper that ties it to ground, or to an island that another added jumper ties
 *     to ground, if one of its frames lies beside such a frame
 */
public record GroundPath(
    Subject subject,
    Span at,
    Unit shown,
    String field,
    String module,
    int frames,
    int lugs,
    int lugsAtLeast,
    Optional<String> jumper)
    implements Fact {

  @Override
  public Subject cause() {
    return Subject.of("bonding", "frames bonded to " + module);
  }
}
