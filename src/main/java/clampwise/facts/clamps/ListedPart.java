package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/**
 * Whether a module type is listed with a part that holds it.
 *
 * @param subject the module type and the part in their field
 * @param cause the module type and the part
 * @param at where the part was chosen
 * @param type name of the module type
 * @param kind what the part is
 * @param part name of the part
 * @param listings how often the module's listing names the part
 * @param least how often it has to
 * @param listed what the listing names
 * @param fitting what to use instead
 */
public record ListedPart(
    Subject subject,
    Subject cause,
    Span at,
    String type,
    String kind,
    String part,
    int listings,
    int least,
    List<String> listed,
    Optional<String> fitting)
    implements Fact {

  @Override
  public Unit shown() {
    return Unit.NUMBER;
  }
}
