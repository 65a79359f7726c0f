package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * How far an attachment sits from the nearest minor rib.
 *
 * @param attachment its name on the drawing
 * @param ribAlongM where the nearest structural rib lies along the eave [m]
 * @param minorOffsetM distance from the minor rib [m]
 * @param structuralOffsetM distance from the structural rib [m]
 * @param withinM distance within which it sits on the minor rib [m]
 */
public record RibOffset(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String attachment,
    int seam,
    double ribAlongM,
    double minorOffsetM,
    double structuralOffsetM,
    double withinM,
    Optional<Limit> limitFrom)
    implements Fact {}
