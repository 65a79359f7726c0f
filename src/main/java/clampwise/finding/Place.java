package clampwise.finding;

import clampwise.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * One of the places at which a finding holds.
 *
 * @param drawnAt where the drawing names what it is about, if another document does not agree with
 *     it
 */
public record Place(Subject subject, Span at, Optional<Comparison> comparison, List<Span> drawnAt) {

  public Place(Subject subject, Span at, Optional<Comparison> comparison) {
    this(subject, at, comparison, List.of());
  }
}
