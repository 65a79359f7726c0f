package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How many attachments a field has for each of its modules.
 *
 * @param oneRow whether it has one row, whose modules share no attachments
 * @param perModule attachments over modules
 * @param least fewest that are usual
 * @param most most that are usual
 * @param bound the end of that range that is nearer
 */
public record AttachmentsPerModule(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    int attachments,
    int modules,
    boolean oneRow,
    double perModule,
    double least,
    double most,
    double bound,
    Optional<Limit> limitFrom)
    implements Fact {}
