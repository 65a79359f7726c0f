package clampwise.facts.install;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How many of a part the torque log has beside those of the layout.
 *
 * @param part kind and name of the part
 * @param logged number in the log
 * @param placed number in the layout
 * @param left those without an entry, 0 if there are none
 * @param mostLeft most of them
 */
public record TorqueLog(
    Subject subject,
    Span at,
    Unit shown,
    String part,
    int logged,
    int placed,
    int left,
    int mostLeft)
    implements Fact {}
