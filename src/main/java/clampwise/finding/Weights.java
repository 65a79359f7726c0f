package clampwise.finding;

import clampwise.source.Span;
import java.util.Map;
import java.util.Optional;

/**
 * What a house makes of the rules it was given.
 *
 * @param severities how much the defects of a rule weigh here, by rule id
 * @param off rules that are not asked here
 */
public record Weights(Map<String, Severity> severities, Map<String, Weights.Off> off) {

  /** Every rule as it ships. */
  public static final Weights SHIPPED = new Weights(Map.of(), Map.of());

  /** Why a rule is not asked, and where that is written. */
  public record Off(String reason, Span at) {}

  /** How much a rule's defects weigh. */
  public Severity of(String rule, Severity shipped) {
    return severities.getOrDefault(rule, shipped);
  }

  /** Why a rule is not asked, if it is not. */
  public Optional<Off> whyOff(String rule) {
    return Optional.ofNullable(off.get(rule));
  }
}
