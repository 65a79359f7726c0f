package clampwise.facts.loads;

import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.calc.combination.Method;
import clampwise.calc.statics.LimitState;
import clampwise.calc.statics.TestedLoad;
import clampwise.calc.trail.Work;
import clampwise.facts.Answers;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.ZoneKeys;
import clampwise.facts.loads.ZoneSpacings.Allowed;
import clampwise.finding.Subject;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Holds the spacings a field allows in its wind zones against those its loads allow.
 *
 * @param <S> the limit state of loads and strengths
 */
final class AllowedSpacings<S extends LimitState> {

  private final LoadedField field;
  private final FieldLoads loads;
  private final FieldSite site;
  private final Strengths.Conversion<S> conversion;
  private final Answers answers;

  private AllowedSpacings(LoadedField field, Strengths.Conversion<S> conversion, Answers answers) {
    this.field = field;
    this.loads = field.loads();
    this.site = loads.site();
    this.conversion = conversion;
    this.answers = answers;
  }

  static void ask(LoadedField field, Answers answers) {
    Standard standard = field.loads().standard();
    if (standard.method() == Method.ASD) {
      new AllowedSpacings<LimitState.Asd>(field, TestedLoad::allowable, answers).ask();
    } else {
      new AllowedSpacings<LimitState.Lrfd>(field, standard.design(), answers).ask();
    }
  }

  private void ask() {
    if (site.field().field().allowedSpacing().isEmpty()) {
      String reason =
          "field " + site.field().name() + " gives no allowed spacing (allowed-spacing)";
      missing(site.subject(), reason, site.field().at());
    } else {
      missingActions();
      FieldParts parts = new FieldParts(site);
      parts.names().forEach(name -> ask(name, parts));
    }
  }

  private void missingActions() {
    loads
        .windUnknown()
        .ifPresent(reason -> missing(site.subject().part("uplift"), reason, site.field().at()));
    loads
        .windUnknown()
        .or(loads::snowUnknown)
        .ifPresent(reason -> missing(site.subject().part("pressure"), reason, site.field().at()));
  }

  private void ask(Text name, FieldParts parts) {
    var strengths =
        parts
            .row(name)
            .then(
                row ->
                    Strengths.of(name, row, loads.standard().method(), conversion, Work.unread()));
    if (strengths instanceof Result<Strengths<S>> strong) {
      zones().forEach(zone -> ask(name, zone, strong.value()));
      strong
          .value()
          .unstated(name)
          .forEach((way, reason) -> missing(subject(name).part(way), reason, name.at()));
    } else if (strengths instanceof NotApplicable<Strengths<S>> none) {
      missing(subject(name), none.reason(), name.at());
    }
  }

  private Set<String> zones() {
    Set<String> zones = new TreeSet<>();
    site.field().modules().forEach(module -> zones.add(loads.of(module).place().zone()));
    return zones;
  }

  private void ask(Text name, String zone, Strengths<S> strong) {
    if (zone.isEmpty()) {
      String reason = "modules of field " + site.field().name() + " lie in no wind zone";
      missing(subject(name).part("no zone"), reason, name.at());
      return;
    }
    Optional<Length> written = ZoneKeys.find(site.field().field().allowedSpacing(), zone);
    Optional<Allowed> allowed = new ZoneSpacings<>(loads, strong).of(zone);
    if (written.isPresent() && allowed.isPresent()) {
      answers.add(fact(name, zone, written.get(), allowed.get(), strong));
    }
  }

  private AllowedSpacing fact(
      Text name, String zone, Length written, Allowed allowed, Strengths<S> strong) {
    double writtenM = Snap.m(written.m());
    double computedM = Snap.m(allowed.lengthM());
    return new AllowedSpacing(
        subject(name).part("zone " + zone),
        site.subject().part("allowed spacing").part("zone " + zone),
        written.at(),
        written.unit(),
        Map.of("pressurePa", site.pressureUnit()),
        site.field().name(),
        zone,
        name.value(),
        loads.standard().combinations().get(allowed.combination()).name(),
        allowed.pressurePa(),
        allowed.pull(),
        writtenM,
        computedM,
        writtenM > computedM ? pattern(name, zone, strong) : Optional.empty());
  }

  private Optional<String> pattern(Text name, String zone, Strengths<S> strong) {
    return SeamPatterns.of(
        field,
        site.field().attachments().stream()
            .filter(
                attachment ->
                    attachment.part().filter(p -> p.value().equals(name.value())).isPresent())
            .filter(attachment -> carries(attachment, zone))
            .toList(),
        strong);
  }

  private boolean carries(Attachment attachment, String zone) {
    return field.shares().of(attachment).stream()
        .anyMatch(share -> loads.of(share.module()).place().zone().equals(zone));
  }

  private Subject subject(Text name) {
    return site.subject().part("attachment " + name);
  }

  private void missing(Subject subject, String reason, Span at) {
    answers.missing(AllowedSpacing.class, subject, reason, at);
  }
}
