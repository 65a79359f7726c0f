package clampwise.facts.survey;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * A property of a roof covering, and whether anybody has confirmed it.
 *
 * @param subject the property of the covering
 * @param at where it is called assumed, or where it is written
 * @param covering name of the covering
 * @param key the property as the job file calls it
 * @param confirmed whether it is not among the assumed ones
 */
public record AssumedFact(Subject subject, Span at, String covering, String key, boolean confirmed)
    implements Fact {

  @Override
  public Unit shown() {
    return Unit.NUMBER;
  }
}
