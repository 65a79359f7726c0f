package clampwise.facts.install;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;

/**
 * How many of a part the torque log has beside those of the layout.
 *
 * @param part kind and name of the part
 * @param logged number in the log
 * @param placed number in the layout
 * @param left those without an entry, 0 if there are none
 * @param mostLeft most of them
 * @param standIn which part is listed in place of this one, in words, if one is
 * @param inPlace the same, to go on with after a remedy
 * @param drawnAt where the drawing names the part, if there is such a one
 */
public record TorqueLog(
    Subject subject,
    Span at,
    Unit shown,
    String part,
    int logged,
    int placed,
    int left,
    int mostLeft,
    String standIn,
    String inPlace,
    List<Span> drawnAt)
    implements Fact {}
