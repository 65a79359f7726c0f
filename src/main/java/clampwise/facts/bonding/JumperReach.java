package clampwise.facts.bonding;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The free length of a jumper, held against the gap between the frames that it joins.
 *
 * @param subject the entry of the jumpers
 * @param at where the entry is written
 * @param shown unit of the length
 * @param part name of the jumper
 * @param from frame at one end, where it has to reach farthest
 * @param to frame at the other
 * @param lengthM its free length [m]
 * @param gapM clear distance of the two frames [m]
 * @param others how many others of the entry do not reach either, in words
 * @param remedy what to do instead
 */
public record JumperReach(
    Subject subject,
    Span at,
    Unit shown,
    String part,
    String from,
    String to,
    double lengthM,
    double gapM,
    String others,
    String remedy)
    implements Fact {

  /** One part of the wrong length is one mistake, between however many frames. */
  @Override
  public Subject cause() {
    return Subject.of("bonding", "length of jumper " + part);
  }
}
