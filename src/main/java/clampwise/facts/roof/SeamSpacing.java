package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The widest spacing between neighbouring attachments along one seam within one wind zone, held
 * against the spacing allowed there.
 *
 * @param seam seam, rib or crest with its number
 * @param lower attachment at its lower end
 * @param upper attachment at its upper end
 * @param zone the more severe zone of the two
 * @param allowedM allowed spacing [m]
 */
public record SeamSpacing(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String seam,
    String lower,
    String upper,
    String zone,
    double spacingM,
    double allowedM)
    implements Fact {}
