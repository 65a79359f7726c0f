package clampwise.facts.install;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Months from one check of the torques to the next.
 *
 * @param months months between checks
 * @param mostMonths most of them
 */
public record RetorqueInterval(
    Subject subject, Span at, Unit shown, int months, int mostMonths, Optional<Limit> limitFrom)
    implements Fact {}
