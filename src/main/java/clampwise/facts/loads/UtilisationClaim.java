package clampwise.facts.loads;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The largest share of an attachment's strength in use that the calculation states, held against
 * the largest of the job.
 *
 * @param attachment the attachment that uses most
 * @param claimed stated share [-]
 * @param computed computed share [-]
 * @param acceptable the least that may be stated for it [-]
 */
public record UtilisationClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String attachment,
    double claimed,
    double computed,
    double acceptable)
    implements Fact {}
