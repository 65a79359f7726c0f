package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The time that a rapid shutdown takes.
 *
 * @param timeS time [s]
 * @param mostS longest time allowed [s]
 */
public record ShutdownTime(
    Subject subject, Span at, Unit shown, double timeS, double mostS, Optional<Limit> limitFrom)
    implements Fact {}
