package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How many modules a written attachment holds.
 *
 * @param subject the attachment
 * @param cause the schedule of its field
 * @param at where it is scheduled
 * @param shown unit of its place
 * @param attachment name of the attachment
 * @param alongM its place along the eave [m]
 * @param upM its place up the slope [m]
 * @param modules modules it holds
 * @param least modules it has to hold
 */
public record AttachmentHold(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String attachment,
    double alongM,
    double upM,
    int modules,
    int least)
    implements Fact {}
