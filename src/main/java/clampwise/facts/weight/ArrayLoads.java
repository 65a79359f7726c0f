package clampwise.facts.weight;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.weight.WeighedField.Heaviest;
import java.util.Optional;

/** Weighs each field on the area that it covers. */
final class ArrayLoads {

  private ArrayLoads() {}

  static void ask(WeighedField asked) {
    Outcome<Heaviest> heaviest = asked.heaviest();
    if (heaviest instanceof Result<Heaviest> known) {
      asked.answers().add(fact(asked, known.value()));
    } else if (heaviest instanceof NotApplicable<Heaviest> unknown) {
      asked.missing(ArrayLoad.class, unknown.reason(), asked.moduleAt());
    }
  }

  private static ArrayLoad fact(WeighedField asked, Heaviest heaviest) {
    Limit most = asked.limits().get("dead-load-without-calculation-most");
    return new ArrayLoad(
        asked.subject().part("dead load"),
        asked.subject().part("dead load"),
        asked.weightAt(),
        asked.pressures(),
        asked.field().name(),
        asked.madeOf(heaviest.type()),
        Snap.m(heaviest.loadPa()),
        Snap.m(most.si()),
        Optional.of(most));
  }
}
