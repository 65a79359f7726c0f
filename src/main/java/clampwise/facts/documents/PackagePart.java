package clampwise.facts.documents;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * A document that a package of its kind holds.
 *
 * @param project kind of project, in its word
 * @param document what is asked for, in words
 * @param present whether the package has one
 */
public record PackagePart(
    Subject subject,
    Span at,
    Unit shown,
    String project,
    String document,
    boolean present,
    Optional<Limit> limitFrom)
    implements Fact {

  /** A package is put together once. */
  @Override
  public Subject cause() {
    return Submittal.DOCUMENTS.part("package");
  }
}
