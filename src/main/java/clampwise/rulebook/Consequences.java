package clampwise.rulebook;

import clampwise.finding.Finding;
import clampwise.finding.Place;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds out which findings only follow from another one: their rule says so, and they go back to
 * the same written value or lie at its places. None follows from one that weighs less.
 */
final class Consequences {

  private final Map<String, List<String>> leaders = new HashMap<>();
  private final Map<String, List<Finding>> byRule = new HashMap<>();
  private final Map<Finding, Concerned> concerned = new IdentityHashMap<>();
  private final Map<Finding, Finding> before = new IdentityHashMap<>();

  private Consequences(List<RuleCard> cards, List<Finding> findings) {
    for (RuleCard card : cards) {
      if (!card.follows().isEmpty()) {
        leaders.put(card.id(), card.follows());
      }
    }
    for (Finding finding : findings) {
      byRule.computeIfAbsent(finding.rule(), rule -> new ArrayList<>()).add(finding);
    }
  }

  /** The findings in their order, each with the one that it follows from, if it does. */
  static List<Finding> told(List<RuleCard> cards, List<Finding> findings) {
    if (findings.size() < 2) {
      return findings;
    }
    Consequences consequences = new Consequences(cards, findings);
    for (Finding finding : findings) {
      consequences.leader(finding).ifPresent(one -> consequences.before.put(finding, one));
    }
    List<Finding> told = new ArrayList<>(findings.size());
    findings.forEach(finding -> told.add(consequences.told(finding)));
    return List.copyOf(told);
  }

  private Finding told(Finding finding) {
    Optional<Finding> first = Optional.ofNullable(before.get(finding));
    while (first.isPresent() && before.containsKey(first.get())) {
      first = Optional.of(before.get(first.get()));
    }
    return first.map(Finding::name).map(finding::following).orElse(finding);
  }

  /** The first of those that weigh most. */
  private Optional<Finding> leader(Finding finding) {
    Optional<Finding> best = Optional.empty();
    for (String rule : leaders.getOrDefault(finding.rule(), List.of())) {
      for (Finding one : byRule.getOrDefault(rule, List.of())) {
        boolean heavier = best.isEmpty() || one.severity().compareTo(best.get().severity()) < 0;
        if (heavier && leads(one, finding)) {
          best = Optional.of(one);
        }
      }
    }
    return best;
  }

  private boolean leads(Finding one, Finding other) {
    return one.severity().compareTo(other.severity()) <= 0
        && (one.at().equals(other.at())
            || concerned(one).holds(concerned(other))
            || isNamed(one, other));
  }

  /**
   * Whether all places of a finding go back to names on the drawing that the other one is about.
   */
  private static boolean isNamed(Finding one, Finding other) {
    Set<Span> spans = new HashSet<>();
    spans.add(one.at());
    for (Place place : one.places()) {
      spans.add(place.at());
      spans.addAll(place.drawnAt());
    }
    for (Place place : other.places()) {
      if (Collections.disjoint(spans, place.drawnAt())) {
        return false;
      }
    }
    return true;
  }

  private Concerned concerned(Finding finding) {
    return concerned.computeIfAbsent(finding, Concerned::of);
  }
}
