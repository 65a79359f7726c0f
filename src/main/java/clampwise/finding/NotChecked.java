package clampwise.finding;

import clampwise.source.Span;

/**
 * A rule that could not judge a subject.
 *
 * @param rule id of the rule
 * @param subject what was not judged
 * @param reason which input is missing or why the method does not apply
 * @param at where the input would be written
 */
public record NotChecked(String rule, Subject subject, String reason, Span at) {}
