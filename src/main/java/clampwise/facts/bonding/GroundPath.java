package clampwise.facts.bonding;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;

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
 * @param cutOff frames of all islands of the field that have no lug
 * @param where which frames those are
 * @param drawnAt jumpers that would ground the island if they reached
 * @param remedy the jumpers and lugs that would ground them all; none more than needed
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
    int cutOff,
    String where,
    List<Span> drawnAt,
    String remedy)
    implements Fact {

  @Override
  public Subject cause() {
    return Subject.of("bonding", "ground paths of field " + field);
  }
}
