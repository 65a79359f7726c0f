package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How many cables lie in one clip, held against how many it holds.
 *
 * @param clip name of the clip
 * @param together cables in one clip
 * @param most cables that it holds
 * @param fitting what to use instead
 */
public record ClipLoad(
    Subject subject,
    Span at,
    Unit shown,
    String clip,
    int together,
    int most,
    Optional<String> fitting)
    implements Fact {}
