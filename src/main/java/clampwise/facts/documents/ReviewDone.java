package clampwise.facts.documents;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * A review that a project of its kind goes through.
 *
 * @param project kind of project, in its word
 * @param review the review, in words
 * @param done whether the package names it
 */
public record ReviewDone(
    Subject subject,
    Span at,
    Unit shown,
    String project,
    String review,
    boolean done,
    Optional<Limit> limitFrom)
    implements Fact {}
