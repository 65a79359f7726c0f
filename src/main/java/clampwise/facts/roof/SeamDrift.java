package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The largest difference between surveyed and drawn seams under a field, held against the slack of
 * its clamps.
 *
 * @param field name of the field
 * @param seam number of the seam that is farthest off
 * @param drawnM where the drawing has it [m]
 * @param measuredM where it was measured [m]
 * @param driftM difference of the two [m]
 * @param slackM how far a clamp may shift before it leaves its clamp zone [m]
 * @param slackFrom what the slack rests on
 */
public record SeamDrift(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    int seam,
    double drawnM,
    double measuredM,
    double driftM,
    double slackM,
    String slackFrom,
    Optional<Limit> limitFrom)
    implements Fact {}
