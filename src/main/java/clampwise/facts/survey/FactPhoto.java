package clampwise.facts.survey;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * A fact of a roof covering that nobody calls assumed, and whether a photo shows it.
 *
 * @param subject the property of the covering
 * @param at where the photos are listed, or where the property is written
 * @param covering name of the covering
 * @param key the property as the job file calls it
 * @param photographed whether it is among the photos
 */
public record FactPhoto(
    Subject subject, Span at, Unit shown, String covering, String key, boolean photographed)
    implements Fact {

  /** Photos of a covering are taken in one visit. */
  @Override
  public Subject cause() {
    return Subject.of("panels." + covering, "photos");
  }
}
