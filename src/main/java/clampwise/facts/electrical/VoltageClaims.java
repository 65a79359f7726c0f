package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.catalogue.Limit;
import clampwise.facts.electrical.ColdCase.Cold;
import clampwise.finding.Subject;
import clampwise.job.Claims;
import clampwise.job.Electrical.PvString;
import clampwise.job.Named;
import clampwise.job.Quantity.Voltage;
import java.util.Optional;

/** Holds the voltages that the drawings state against the computed ones. */
final class VoltageClaims {

  private VoltageClaims() {}

  static void ask(Wiring wiring) {
    wiring.job().claims().map(Claims::stringVoltages).stream()
        .flatMap(claims -> claims.all().stream())
        .forEach(claim -> ask(wiring, claim));
  }

  private static void ask(Wiring wiring, Named.Item<Voltage> claim) {
    String name = claim.name().value();
    Subject subject = Subject.of("claims", "voltage of string " + name);
    Optional<Named.Item<PvString>> string =
        Optional.ofNullable(wiring.electrical().strings().items().get(name));
    if (string.isEmpty()) {
      String reason = wiring.lacks("string " + name, "strings", name);
      wiring.missing(VoltageClaim.class, subject, reason, claim.name().at());
      return;
    }
    ColdCase cold = ColdCase.of(wiring, string.get());
    Outcome<Cold> volts = cold.cold();
    if (volts instanceof NotApplicable<Cold> unknown) {
      wiring.missing(VoltageClaim.class, subject, unknown.reason(), claim.name().at());
    } else {
      wiring.answers().add(fact(cold, claim.value(), volts.result().orElseThrow()));
    }
  }

  private static VoltageClaim fact(ColdCase string, Voltage claimed, Cold cold) {
    Limit share = string.wiring().limits().get("string-voltage-claim-least");
    return new VoltageClaim(
        Subject.of("claims", "voltage of string " + string.name()),
        claimed.at(),
        claimed.unit(),
        string.name().value(),
        claimed.v(),
        StringVoltages.snapped(cold.whole().si()),
        StringVoltages.snapped(cold.whole().si() * share.si()),
        cold.method(),
        string.lowestInWords(),
        ShownWork.of("Voltage of string " + string.name(), cold.work()),
        Optional.of(share));
  }
}
