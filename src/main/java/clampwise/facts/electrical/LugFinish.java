package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * What of a lug touches the aluminium of a frame.
 *
 * @param lug name of the lug
 * @param finish metal or plating
 * @param bareCopper whether copper lies bare on it
 * @param fitting lugs of another finish, in words
 */
public record LugFinish(
    Subject subject,
    Span at,
    Unit shown,
    String lug,
    String finish,
    boolean bareCopper,
    Optional<String> fitting)
    implements Fact {}
