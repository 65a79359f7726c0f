package clampwise.rulebook;

import clampwise.facts.Fact;
import clampwise.facts.Facts;
import clampwise.facts.Missing;
import clampwise.finding.Coverage;
import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
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

  private final List<RuleCard> cards;
  private final Facts facts;
  private final Report report;
  private final Components components = new Components();

  Verdict(List<RuleCard> cards, Facts facts, Report report) {
    this.cards = cards;
    this.facts = facts;
    this.report = report;
  }

  Judgement judgement() {
    return new Judgement(
        cards.stream().flatMap(this::findings).sorted(FINDINGS).toList(),
        cards.stream().flatMap(this::gaps).sorted(GAPS).toList(),
        coverage());
  }

  private Stream<Finding> findings(RuleCard card) {
    FindingWriter writer = new FindingWriter(components, card);
    return Causes.of(report.facts(card.id())).entrySet().stream()
        .map(each -> writer.write(each.getKey(), each.getValue()));
  }

  private Stream<NotChecked> gaps(RuleCard card) {
    return facts.missing().stream()
        .filter(missing -> missing.question().getSimpleName().equals(card.judges()))
        .map(missing -> gap(card, missing));
  }

  private static NotChecked gap(RuleCard card, Missing missing) {
    return new NotChecked(card.id(), missing.subject(), missing.reason(), missing.at());
  }

  private List<Coverage> coverage() {
    Map<Class<?>, Long> asked = counts(facts.facts(), Fact::getClass);
    Map<Class<?>, Long> missing = counts(facts.missing(), Missing::question);
    return cards.stream().map(card -> coverage(card, asked, missing)).toList();
  }

  private Coverage coverage(RuleCard card, Map<Class<?>, Long> asked, Map<Class<?>, Long> missing) {
    int notMet = report.facts(card.id()).size();
    return new Coverage(
        card.id(), count(asked, card.judges()) - notMet, notMet, count(missing, card.judges()));
  }

  private static <T> Map<Class<?>, Long> counts(List<T> all, Function<T, Class<?>> type) {
    return all.stream().collect(Collectors.groupingBy(type, Collectors.counting()));
  }

  private static int count(Map<Class<?>, Long> counts, String type) {
    return (int)
        counts.entrySet().stream()
            .filter(each -> each.getKey().getSimpleName().equals(type))
            .mapToLong(Map.Entry::getValue)
            .sum();
  }
}
