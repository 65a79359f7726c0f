package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * A label that the code asks for.
 *
 * @param label its name, in words
 * @param drawn whether the drawings show it
 */
public record LabelNeeded(
    Subject subject, Span at, Unit shown, String label, boolean drawn, Optional<Limit> limitFrom)
    implements Fact {

  /** Labels are forgotten together. */
  @Override
  public Subject cause() {
    return Wiring.ELECTRICAL.part("labels");
  }
}
