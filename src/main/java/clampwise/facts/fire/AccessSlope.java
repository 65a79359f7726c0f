package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The slope of a plane with an array, held against the slope up to which access rules leave it out.
 *
 * @param rules the rule set
 * @param plane its name
 * @param slopeRad its slope [rad]
 * @param exemptRad slope up to which it is left out [rad]
 */
public record AccessSlope(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String rules,
    String plane,
    double slopeRad,
    double exemptRad,
    Optional<Limit> limitFrom)
    implements Fact {}
