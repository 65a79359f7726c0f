package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The slope between modules and roof, held against the slope up to which the wind method for panels
 * parallel to the roof holds.
 *
 * @param field its name
 * @param tiltRad slope between the two [rad]
 * @param mostRad largest slope [rad]
 */
public record ArrayTilt(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    double tiltRad,
    double mostRad,
    Optional<Limit> limitFrom)
    implements Fact {}
