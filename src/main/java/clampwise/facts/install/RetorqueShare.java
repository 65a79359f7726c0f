package clampwise.facts.install;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Share of the module clamps that is checked again in later years.
 *
 * @param clampsShare the share
 * @param leastShare least share
 */
public record RetorqueShare(
    Subject subject,
    Span at,
    Unit shown,
    double clampsShare,
    double leastShare,
    Optional<Limit> limitFrom)
    implements Fact {}
