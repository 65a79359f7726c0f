package clampwise.facts.documents;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The module that a sheet names beside those of the layout.
 *
 * @param sheet its number or name
 * @param kind what it is, in words
 * @param own module on the sheet
 * @param drawn modules of the layout
 * @param agrees whether the layout has the one on the sheet
 */
public record SheetModule(
    Subject subject,
    Span at,
    Unit shown,
    String sheet,
    String kind,
    String own,
    String drawn,
    boolean agrees)
    implements Fact {

  /** A module that was exchanged is one change on all sheets. */
  @Override
  public Subject cause() {
    return Submittal.DOCUMENTS.part("module " + own);
  }
}
