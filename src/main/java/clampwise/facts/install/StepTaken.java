package clampwise.facts.install;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * A step that work with one kind of attachment needs.
 *
 * @param attachment kind of attachment, in words
 * @param step the step, in words
 * @param listed whether the steps name it
 */
public record StepTaken(
    Subject subject,
    Span at,
    Unit shown,
    String attachment,
    String step,
    boolean listed,
    Optional<Limit> limitFrom)
    implements Fact {

  /** A list of steps is completed in one go. */
  @Override
  public Subject cause() {
    return SiteWork.INSTALL.part("steps with " + attachment);
  }
}
