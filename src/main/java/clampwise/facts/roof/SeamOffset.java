package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * How far an attachment sits from the centre line of the nearest seam, structural rib or crest.
 *
 * @param attachment its name on the drawing
 * @param seam number of that seam
 * @param seamAlongM where that seam lies along the eave [m]
 * @param line what the covering has: seam, structural rib or crest
 * @param offsetM distance from its centre line [m]
 * @param mostM largest distance that still counts as on it [m]
 */
public record SeamOffset(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String attachment,
    int seam,
    double seamAlongM,
    String line,
    double offsetM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
