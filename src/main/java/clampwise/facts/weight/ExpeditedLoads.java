package clampwise.facts.weight;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.weight.WeighedField.Heaviest;
import java.util.Optional;

/** Holds the dead load of each field against the expedited path. */
final class ExpeditedLoads {

  private static final String WHAT = "dead load";

  private ExpeditedLoads() {}

  static void ask(ExpeditedPath path) {
    Outcome<Heaviest> heaviest = path.asked().heaviest();
    if (heaviest instanceof Result<Heaviest> known) {
      path.add(fact(path, known.value()));
    } else if (heaviest instanceof NotApplicable<Heaviest> unknown) {
      path.missing(ExpeditedLoad.class, WHAT, unknown.reason());
    }
  }

  private static ExpeditedLoad fact(ExpeditedPath path, Heaviest heaviest) {
    Limit most = path.limit("added-dead-load-most");
    return new ExpeditedLoad(
        path.subject(WHAT),
        ExpeditedPath.cause(WHAT),
        path.at(),
        path.asked().pressures(),
        path.asked().field().name(),
        path.asked().madeOf(heaviest.type()),
        Snap.m(heaviest.loadPa()),
        Snap.m(most.si()),
        Optional.of(most));
  }
}
