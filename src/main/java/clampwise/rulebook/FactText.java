package clampwise.rulebook;

import clampwise.facts.Fact;
import clampwise.finding.Comparison;
import clampwise.units.QuantityPrint;
import java.util.Optional;

/** Fills a rule's texts with the numbers and names of a fact. */
final class FactText {
  private final Components components;
  private final RuleCard card;

  FactText(Components components, RuleCard card) {
    this.components = components;
    this.card = card;
  }

  String message(Fact fact) {
    return fill(card.message(), fact);
  }

  String remedy(Fact fact) {
    return fill(card.remedy(), fact);
  }

  /** The measured number and its limit, if the rule compares numbers. */
  Optional<Comparison> comparison(Fact fact) {
    return card.measured()
        .flatMap(
            measured ->
                components
                    .number(fact, measured)
                    .flatMap(
                        value ->
                            card.limit()
                                .flatMap(limit -> limit(fact, measured, limit))
                                .map(limit -> compare(fact, measured, value, limit))));
  }

  /** A component; or a quantity that an own rule writes down, in the unit of what is measured. */
  private Optional<Double> limit(Fact fact, String measured, String limit) {
    return card.writesLimit()
        ? WrittenLimit.si(limit, Suffix.unit(measured, fact.shown()))
        : components.number(fact, limit);
  }

  private static Comparison compare(Fact fact, String name, double measured, double limit) {
    return new Comparison(measured, limit, Suffix.unit(name, fact.shown()));
  }

  private String fill(Template template, Fact fact) {
    Optional<QuantityPrint.Pair> pair =
        comparison(fact).map(c -> QuantityPrint.pair(c.measuredSi(), c.limitSi(), c.unit()));
    return template.fill(name -> text(fact, name, pair));
  }

  /** A value in the unit it was written in; one that is compared also in the other one's. */
  private Optional<String> text(Fact fact, String name, Optional<QuantityPrint.Pair> pair) {
    Optional<String> compared = compared(name, pair);
    Optional<String> written =
        Optional.ofNullable(fact.units().get(name))
            .filter(unit -> compared.isEmpty() || !unit.equals(fact.shown()))
            .flatMap(
                unit ->
                    components.number(fact, name).map(value -> QuantityPrint.text(value, unit)));
    if (written.isPresent()) {
      return written.map(own -> own + compared.map(other -> " (" + other + ")").orElse(""));
    }
    return compared.or(
        () ->
            components.find(fact, name).flatMap(value -> ValueText.of(name, value, fact.shown())));
  }

  private Optional<String> compared(String name, Optional<QuantityPrint.Pair> pair) {
    if (card.measured().equals(Optional.of(name)) && pair.isPresent()) {
      return pair.map(QuantityPrint.Pair::first);
    }
    if (card.limit().filter(limit -> isLimit(name, limit)).isPresent() && pair.isPresent()) {
      return pair.map(QuantityPrint.Pair::second);
    }
    return Optional.empty();
  }

  /** A limit that is written down as a quantity has no name but this one. */
  private boolean isLimit(String name, String limit) {
    return name.equals(limit) || name.equals("limit") && card.writesLimit();
  }
}
