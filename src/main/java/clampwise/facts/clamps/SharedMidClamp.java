package clampwise.facts.clamps;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * Two frames of different module types under one mid clamp.
 *
 * @param subject the upper of the two modules
 * @param cause the two module types and the clamp
 * @param at where the type of the odd module was chosen
 * @param shown unit of the frame heights
 * @param units units of lengths that were written in one of their own
 * @param clamp name of the mid clamp
 * @param lower name of the module below
 * @param upper name of the module above
 * @param lowerHeightM frame height of the module below [m]
 * @param upperHeightM frame height of the module above [m]
 * @param differenceM difference of the frame heights [m]
 * @param toleranceM largest difference the clamp can hold [m]
 * @param limitFrom the limit used where the clamp states no tolerance
 */
public record SharedMidClamp(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String clamp,
    String lower,
    String upper,
    double lowerHeightM,
    double upperHeightM,
    double differenceM,
    double toleranceM,
    Optional<Limit> limitFrom)
    implements Fact {}
