package clampwise.facts;

import clampwise.finding.Subject;
import clampwise.source.Span;

/**
 * A question that could not be answered for a subject.
 *
 * @param question the fact type that would have answered it; {@link Fact} itself where nothing was
 *     there to ask any question about
 * @param subject what it was asked about
 * @param reason which input is missing, in the designer's words, such as {@code the frame height of
 *     module M is not given}
 * @param at where the input would be written
 */
public record Missing(Class<? extends Fact> question, Subject subject, String reason, Span at) {}
