package clampwise.facts.electrical;

import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.ElectricalCode;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.Optional;

/** Holds the code that the strings are drawn to against the one of the site. */
final class CodeQuestions {

  private static final Subject CODE = Wiring.ELECTRICAL.part("code");

  private CodeQuestions() {}

  static void ask(Wiring wiring) {
    Optional<Choice<ElectricalCode>> own = wiring.electrical().code();
    Optional<ElectricalCode> site = ElectricalCode.ofSite(wiring.job());
    if (own.isPresent() && site.isPresent()) {
      wiring.answers().add(fact(own.get(), site.get()));
    } else if (own.isPresent()) {
      ElectricalCode.textOfSite(wiring.job()).ifPresent(text -> unknown(wiring, text));
    }
  }

  private static void unknown(Wiring wiring, Text text) {
    String reason = "the electrical code in force at the site, " + text + ", is none known here";
    wiring.missing(CodeNamed.class, CODE, reason, text.at());
  }

  private static CodeNamed fact(Choice<ElectricalCode> own, ElectricalCode site) {
    return new CodeNamed(
        CODE, own.at(), Unit.NUMBER, own.toString(), Choice.word(site), own.value() == site);
  }
}
