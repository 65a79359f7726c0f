package clampwise.facts.electrical;

import clampwise.job.Choice;
import clampwise.job.ElectricalCode;
import clampwise.units.Unit;
import java.util.Optional;

/** Holds the code that the strings are drawn to against the one of the site. */
final class CodeQuestions {

  private CodeQuestions() {}

  static void ask(Wiring wiring) {
    Optional<Choice<ElectricalCode>> own = wiring.electrical().code();
    Optional<ElectricalCode> site = ElectricalCode.ofSite(wiring.job());
    if (own.isPresent() && site.isPresent()) {
      wiring.answers().add(fact(own.get(), site.get()));
    }
  }

  private static CodeNamed fact(Choice<ElectricalCode> own, ElectricalCode site) {
    return new CodeNamed(
        Wiring.ELECTRICAL.part("code"),
        own.at(),
        Unit.NUMBER,
        own.toString(),
        Choice.word(site),
        own.value() == site);
  }
}
