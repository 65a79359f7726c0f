package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The pathways from the lowest edge of a plane to an escape and rescue opening.
 *
 * @param opening its name
 * @param plane the plane below it
 * @param widthM width of a pathway [m]
 * @param found pathways found, no more counted than are asked for
 * @param least pathways that there must be
 */
public record EscapePath(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String opening,
    String plane,
    double widthM,
    int found,
    int least,
    Optional<Limit> limitFrom)
    implements Fact {}
