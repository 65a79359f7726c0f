package clampwise.facts.bonding;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * What loses ground when one module of a field is taken out, with its clamps.
 *
 * @param subject the field
 * @param at where its jumpers are written
 * @param shown counts have no unit
 * @param field name of the field
 * @param frames number of its frames
 * @param cutting modules of the field that cut others off
 * @param module the one that cuts off most
 * @param cutOff frames that it cuts off, itself not counted
 * @param cutOffAtMost frames that may be cut off
 * @param bridged whether a temporary jumper bridges a module before it is taken out
 * @param once what has to be mended first, in words, if anything
 * @param remedy the jumpers and lugs of the whole job that would leave none cut off
 */
public record ModuleRemoval(
    Subject subject,
    Span at,
    Unit shown,
    String field,
    int frames,
    int cutting,
    String module,
    int cutOff,
    int cutOffAtMost,
    boolean bridged,
    String once,
    String remedy)
    implements Fact {

  /** Columns tied in a chain are one habit, in however many fields. */
  @Override
  public Subject cause() {
    return Subject.of("bonding", "removal of a module");
  }
}
