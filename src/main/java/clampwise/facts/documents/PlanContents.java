package clampwise.facts.documents;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * What the sheets of one kind have to show between them.
 *
 * @param kind what they are, in words
 * @param item what is asked for, in words
 * @param drawn whether one of them shows it
 */
public record PlanContents(
    Subject subject,
    Span at,
    Unit shown,
    String kind,
    String item,
    boolean drawn,
    Optional<Limit> limitFrom)
    implements Fact {

  /** What a drawing lacks is added in one go. */
  @Override
  public Subject cause() {
    return Submittal.DOCUMENTS.part(kind + " contents");
  }
}
