package clampwise.facts.install;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Age of the certificate of a torque tool on the last day of work.
 *
 * @param tool its name
 * @param certified date of the certificate
 * @param work last day of work
 * @param age how old the certificate is on that day, in words
 * @param months months after which the certificate would have to hold
 * @param mostMonths most of them
 */
public record ToolCertificate(
    Subject subject,
    Span at,
    Unit shown,
    String tool,
    String certified,
    String work,
    String age,
    int months,
    int mostMonths,
    Optional<Limit> limitFrom)
    implements Fact {}
