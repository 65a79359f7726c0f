package clampwise.facts.loads;

import clampwise.facts.Answers;
import clampwise.finding.Subject;
import clampwise.units.Unit;
import java.util.Optional;

/** Says for each field whether the method for modules parallel to the roof was used. */
final class EqualisationCredits {

  private EqualisationCredits() {}

  static void ask(FieldLoads loads, Answers answers) {
    Optional<PanelMethod> method = loads.standard().wind().result().flatMap(FieldWind::parallel);
    Optional<String> unknown = method.flatMap(PanelMethod::unknown).or(loads::windUnknown);
    if (unknown.isPresent()) {
      answers.missing(EqualisationCredit.class, subject(loads), unknown.get(), at(loads));
    } else {
      method.ifPresent(known -> answers.add(fact(loads, known)));
    }
  }

  private static EqualisationCredit fact(FieldLoads loads, PanelMethod method) {
    return new EqualisationCredit(
        subject(loads),
        subject(loads),
        at(loads),
        Unit.NUMBER,
        loads.site().field().name(),
        method.failed().isEmpty(),
        method.failed().orElse(""));
  }

  private static clampwise.source.Span at(FieldLoads loads) {
    return loads.site().field().at();
  }

  private static Subject subject(FieldLoads loads) {
    return loads.site().subject().part("equalisation");
  }
}
