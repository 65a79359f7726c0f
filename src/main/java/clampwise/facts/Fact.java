package clampwise.facts;

import clampwise.calc.trail.Chain;
import clampwise.catalogue.Limit;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One answered question about the layout, ready to be judged: the measured value and its limit side
 * by side. Rules compare the components of a fact; they compute nothing.
 *
 * <p>A fact type belongs to one question. Where the question cannot be answered for a subject, the
 * derivation records a {@link Missing} of that type instead.
 */
public interface Fact {

  /** What the fact is about. */
  Subject subject();

  /**
   * What would have to change if the fact is a defect; facts with one cause make one finding. The
   * same part of several fields is one cause too where it goes back to the same written values.
   */
  default Subject cause() {
    return subject();
  }

  /** The written value that would have to change. */
  Span at();

  /**
   * Where the drawing names what another document leaves out or states otherwise: if it is wrong
   * there, the document may be right.
   */
  default List<Span> drawnAt() {
    return List.of();
  }

  /** The unit in which the designer wrote the lengths this fact compares. */
  Unit shown();

  /** The units of components that were written in one of their own. */
  default Map<String, Unit> units() {
    return Map.of();
  }

  /** The load case that governs what is compared; empty where no loads are. */
  default String loadCase() {
    return "";
  }

  /** How the measured value was got, where it was calculated. */
  default Optional<Chain> chain() {
    return Optional.empty();
  }

  /** The limit of code or practice that the fact is held against, if it is one. */
  default Optional<Limit> limitFrom() {
    return Optional.empty();
  }
}
