package clampwise.rulebook;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Basis;
import clampwise.finding.Finding;
import clampwise.finding.Place;
import clampwise.finding.Subject;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes findings of one rule. */
final class FindingWriter {
  /** The further beyond its limit the worse; the rest only makes the order certain. */
  private static final Comparator<Hit> WORST_FIRST =
      Comparator.comparingDouble(Hit::beyond)
          .reversed()
          .thenComparing(hit -> hit.fact().at())
          .thenComparing(hit -> hit.fact().subject())
          .thenComparing(hit -> hit.fact().toString());

  private final RuleCard card;
  private final FactText text;
  private final StandardsInForce standards;

  private record Hit(Fact fact, Place place) {
    double beyond() {
      return place.comparison().map(c -> Math.abs(c.measuredSi() - c.limitSi())).orElse(0.0);
    }
  }

  FindingWriter(Components components, RuleCard card, StandardsInForce standards) {
    this.card = card;
    this.text = new FactText(components, card);
    this.standards = standards;
  }

  /** One finding for all facts that share a cause. */
  Finding write(Subject cause, List<Fact> facts) {
    List<Hit> hits = facts.stream().map(this::hit).sorted(WORST_FIRST).toList();
    Fact worst = hits.get(0).fact();
    return new Finding(
        card.id(),
        card.severity(),
        card.title(),
        text.message(worst),
        card.reason(),
        text.remedy(worst),
        basis(worst),
        cause,
        worst.at(),
        hits.get(0).place().comparison(),
        hits.stream().map(Hit::place).toList(),
        worst.chain(),
        worst.loadCase(),
        Optional.empty());
  }

  private Hit hit(Fact fact) {
    return new Hit(
        fact, new Place(fact.subject(), fact.at(), text.comparison(fact), fact.drawnAt()));
  }

  /**
   * What the rule rests on at the site and what its limit does, without saying anything twice;
   * practice where the rule names only standards of other places.
   */
  private List<Basis> basis(Fact fact) {
    Optional<Basis> limit =
        fact.limitFrom()
            .filter(from -> card.usesLimitOfFact())
            .map(FindingWriter::basis)
            .map(standards::inForce);
    Stream<Basis> others =
        card.basis().stream()
            .filter(standards::hold)
            .map(standards::inForce)
            .filter(own -> limit.filter(l -> l.covers(own)).isEmpty());
    List<Basis> all = Stream.concat(others, limit.stream()).distinct().toList();
    return all.isEmpty() ? List.of(Basis.of("practice", "")) : all;
  }

  private static Basis basis(Limit limit) {
    return new Basis(
        limit.document(), limit.edition(), limit.clause(), limit.obtained(), limit.validity());
  }
}
