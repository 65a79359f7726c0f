package clampwise.rulebook;

import clampwise.facts.Fact;
import clampwise.facts.Facts;
import clampwise.facts.Missing;
import clampwise.facts.NoModules;
import clampwise.facts.OtherCores;
import clampwise.finding.Coverage;
import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import clampwise.finding.Subject;
import clampwise.finding.Weights;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts what the rules reported into the form a reader needs. */
final class Verdict {
  private static final Comparator<Finding> FINDINGS =
      Comparator.comparing(Finding::severity)
          .thenComparing(Finding::at)
          .thenComparing(Finding::rule)
          .thenComparing(Finding::cause);
  private static final Comparator<NotChecked> GAPS =
      Comparator.comparing(NotChecked::at)
          .thenComparing(NotChecked::rule)
          .thenComparing(NotChecked::subject)
          .thenComparing(NotChecked::reason);

  private static final Subject POLICY = Subject.of("policy");

  private final List<RuleCard> cards;
  private final Weights weights;
  private final Report report;
  private final Map<String, Long> asked;
  private final Map<String, List<Missing>> missing;
  private final Components components;
  private final StandardsInForce standards;

  Verdict(
      List<RuleCard> cards, Weights weights, Components components, Facts facts, Report report) {
    this.weights = weights;
    this.cards =
        weights.severities().isEmpty()
            ? cards
            : cards.stream()
                .map(card -> card.weighing(weights.of(card.id(), card.severity())))
                .toList();
    this.components = components;
    this.report = report;
    this.standards = StandardsInForce.of(facts.layout().job());
    this.asked =
        facts.facts().stream()
            .collect(
                Collectors.groupingBy(f -> f.getClass().getSimpleName(), Collectors.counting()));
    this.missing =
        facts.missing().stream().collect(Collectors.groupingBy(m -> m.question().getSimpleName()));
  }

  Judgement judgement() {
    return new Judgement(
        Consequences.told(cards, findings().stream().sorted(FINDINGS).toList()),
        cards.stream().flatMap(this::gaps).sorted(GAPS).toList(),
        cards.stream().map(this::coverage).toList());
  }

  /** Findings are written on all cores. */
  private List<Finding> findings() {
    return OtherCores.all(cards.stream().flatMap(this::findings).toList());
  }

  private Stream<Supplier<Finding>> findings(RuleCard card) {
    if (weights.whyOff(card.id()).isPresent()) {
      return Stream.empty();
    }
    FindingWriter writer = new FindingWriter(components, card, standards);
    return Causes.of(report.facts(card.id())).entrySet().stream()
        .map(each -> () -> writer.write(each.getKey(), each.getValue()));
  }

  private Stream<NotChecked> gaps(RuleCard card) {
    Optional<Weights.Off> off = weights.whyOff(card.id());
    if (off.isPresent()) {
      String reason = "switched off by the policy: " + off.get().reason();
      return Stream.of(new NotChecked(card.id(), POLICY, reason, off.get().at()));
    }
    return missing(card).stream()
        .map(
            missing ->
                new NotChecked(card.id(), missing.subject(), missing.reason(), missing.at()));
  }

  /** What is missing for a rule: of its own question, or all that it could ask about. */
  private List<Missing> missing(RuleCard card) {
    List<Missing> own = missing.getOrDefault(card.judges(), List.of());
    boolean idle = own.isEmpty() && !asked.containsKey(card.judges());
    return idle && NoModules.concern(card.judges())
        ? missing.getOrDefault(Fact.class.getSimpleName(), List.of())
        : own;
  }

  private Coverage coverage(RuleCard card) {
    if (weights.whyOff(card.id()).isPresent()) {
      int all = asked.getOrDefault(card.judges(), 0L).intValue() + missing(card).size();
      return new Coverage(card.id(), 0, 0, all);
    }
    int notMet = report.facts(card.id()).size();
    int met = asked.getOrDefault(card.judges(), 0L).intValue() - notMet;
    return new Coverage(card.id(), met, notMet, missing(card).size());
  }
}
