package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Pathways of a plane that are left when its obstructions are walked round.
 *
 * @param plane its name
 * @param obstructions what stands in the way, by name
 * @param widthM width of a pathway [m]
 * @param free pathways past modules and obstructions
 * @param least pathways that there are past the modules alone, no more than are asked for
 */
public record PathObstruction(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String plane,
    String obstructions,
    double widthM,
    int free,
    int least,
    Optional<Limit> limitFrom)
    implements Fact {}
