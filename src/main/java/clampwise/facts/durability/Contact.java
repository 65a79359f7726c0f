package clampwise.facts.durability;

import clampwise.finding.Subject;
import clampwise.source.Span;

/**
 * Two surfaces that touch.
 *
 * @param subject what touches
 * @param cause what would have to change
 * @param at where it is written
 * @param part the part
 * @param base what it lies on
 * @param size how large the part is beside what it lies on
 * @param isolated whether something keeps them apart
 * @param cure what puts it right
 */
record Contact(
    Subject subject,
    Subject cause,
    Span at,
    Surface part,
    Surface base,
    Size size,
    boolean isolated,
    String cure) {

  /** How large a part is beside what it lies on. */
  enum Size {
    SMALL,
    ALIKE
  }
}
