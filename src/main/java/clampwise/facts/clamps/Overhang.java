package clampwise.facts.clamps;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How far a module reaches past the outermost clamp of an edge.
 *
 * @param subject the module
 * @param cause the schedule of its field
 * @param at where the outermost clamp is scheduled
 * @param shown unit of the limit, or of the module's length
 * @param module name of the module
 * @param edge its supported edge
 * @param overhangM from the middle of the outermost clamp to the corner [m]
 * @param mostM longest overhang allowed [m]
 * @param spanM distance to the next clamp [m]
 * @param limitFrom the limit used where the module's manual states none
 */
public record Overhang(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String module,
    String edge,
    double overhangM,
    double mostM,
    double spanM,
    Optional<Limit> limitFrom)
    implements Fact {}
