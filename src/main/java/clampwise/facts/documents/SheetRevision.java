package clampwise.facts.documents;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The revision of a sheet beside the one of the drawings.
 *
 * @param sheet its number or name
 * @param kind what it is, in words
 * @param own revision on the sheet
 * @param current revision of the drawings
 * @param agrees whether both are one
 */
public record SheetRevision(
    Subject subject,
    Span at,
    Unit shown,
    String sheet,
    String kind,
    String own,
    String current,
    boolean agrees)
    implements Fact {

  /** Sheets that stayed behind together did so for one reason. */
  @Override
  public Subject cause() {
    return Submittal.DOCUMENTS.part("revision " + own);
  }
}
