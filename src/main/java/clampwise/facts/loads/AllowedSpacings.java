package clampwise.facts.loads;

import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.calc.combination.Method;
import clampwise.calc.statics.LimitState;
import clampwise.calc.statics.TestedLoad;
import clampwise.calc.trail.Work;
import clampwise.facts.Answers;
import clampwise.facts.layout.ZoneKeys;
import clampwise.facts.loads.ZoneSpacings.Allowed;
import clampwise.finding.Subject;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
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

  private final FieldLoads loads;
  private final FieldSite site;
  private final Strengths.Conversion<S> conversion;
  private final Answers answers;

  private AllowedSpacings(FieldLoads loads, Strengths.Conversion<S> conversion, Answers answers) {
    this.loads = loads;
    this.site = loads.site();
    this.conversion = conversion;
    this.answers = answers;
  }

  static void ask(FieldLoads loads, Answers answers) {
    if (loads.standard().method() == Method.ASD) {
      new AllowedSpacings<LimitState.Asd>(loads, TestedLoad::allowable, answers).ask();
    } else {
      new AllowedSpacings<LimitState.Lrfd>(loads, loads.standard().design(), answers).ask();
    }
  }

  private void ask() {
    if (site.field().field().allowedSpacing().isEmpty()) {
      missing("field " + site.field().name() + " gives no allowed spacing");
    } else if (loads.windUnknown().isPresent()) {
      missing(loads.windUnknown().get());
    } else {
      FieldParts parts = new FieldParts(site);
      parts.names().forEach(name -> ask(name, parts));
    }
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
    } else if (strengths instanceof NotApplicable<Strengths<S>> none) {
      answers.missing(AllowedSpacing.class, subject(name), none.reason(), name.at());
    }
  }

  private Set<String> zones() {
    Set<String> zones = new TreeSet<>();
    site.field().modules().forEach(module -> zones.add(loads.of(module).place().zone()));
    return zones;
  }

  private void ask(Text name, String zone, Strengths<S> strong) {
    Optional<Length> written = ZoneKeys.find(site.field().field().allowedSpacing(), zone);
    Optional<Allowed> allowed = new ZoneSpacings(loads).of(zone, strong);
    if (written.isPresent() && allowed.isPresent()) {
      answers.add(fact(name, zone, written.get(), allowed.get()));
    }
  }

  private AllowedSpacing fact(Text name, String zone, Length written, Allowed allowed) {
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
        Snap.m(written.m()),
        Snap.m(allowed.spacing().lengthM()),
        allowed.pattern());
  }

  private Subject subject(Text name) {
    return site.subject().part("attachment " + name);
  }

  private void missing(String reason) {
    answers.missing(AllowedSpacing.class, site.subject(), reason, site.field().at());
  }
}
