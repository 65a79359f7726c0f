package clampwise.facts.install;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * A step in the list beside those that come before it.
 *
 * @param attachment kind of attachment, in words
 * @param step the step, in words
 * @param inOrder whether it stands where it may stay
 * @param place where it belongs, in words
 */
public record StepOrder(
    Subject subject,
    Span at,
    Unit shown,
    String attachment,
    String step,
    boolean inOrder,
    String place,
    Optional<Limit> limitFrom)
    implements Fact {}
