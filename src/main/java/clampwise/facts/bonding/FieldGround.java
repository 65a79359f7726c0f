package clampwise.facts.bonding;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How many frames of a field are bonded to ground.
 *
 * @param subject the field
 * @param at where lugs are written
 * @param shown counts have no unit
 * @param field name of the field
 * @param module its first frame
 * @param frames number of its frames
 * @param grounded frames that are bonded to a lug
 * @param groundedAtLeast frames that have to be, for the field to be grounded at all
 */
public record FieldGround(
    Subject subject,
    Span at,
    Unit shown,
    String field,
    String module,
    int frames,
    int grounded,
    int groundedAtLeast)
    implements Fact {

  @Override
  public Subject cause() {
    return Subject.of("bonding", "ground of field " + field);
  }
}
