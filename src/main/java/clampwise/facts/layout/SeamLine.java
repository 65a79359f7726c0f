package clampwise.facts.layout;

import clampwise.source.Span;
import java.util.OptionalDouble;

/**
 * A seam, structural rib or crest.
 *
 * @param word what it is called
 * @param number counted from the left, from 1
 * @param alongM where it is: surveyed if surveyed, else nominal [m]
 * @param nominalM where the drawing has it, if the drawing gives a pitch [m]
 * @param fromUpM its lower end [m]
 * @param toUpM its upper end [m]
 * @param surveyed whether it was measured
 * @param at where its position was written
 */
public record SeamLine(
    LineWord word,
    int number,
    double alongM,
    OptionalDouble nominalM,
    double fromUpM,
    double toUpM,
    boolean surveyed,
    Span at) {

  /** Its name on the drawing, such as {@code seam 7}. */
  public String name() {
    return word.one() + " " + number;
  }
}
