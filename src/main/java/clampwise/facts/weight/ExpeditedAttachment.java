package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The weight on the attachment that carries most, held against what the expedited path admits.
 *
 * @param attachment its name
 * @param weightN weight on it [N]
 * @param mostN weight that the path admits [N]
 */
public record ExpeditedAttachment(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String attachment,
    double weightN,
    double mostN,
    Optional<Limit> limitFrom)
    implements Fact {}
