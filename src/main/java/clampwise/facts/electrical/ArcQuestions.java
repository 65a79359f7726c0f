package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.catalogue.Limit;
import clampwise.facts.electrical.ColdCase.Cold;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Electrical.ArcFault;
import clampwise.job.ElectricalCode;
import clampwise.units.Units;
import java.util.Optional;

/** Asks, under the NEC, what protects the dc circuits against arcs. */
record ArcQuestions(Wiring wiring) {

  private static final Subject ARCS = Wiring.ELECTRICAL.part("arc-fault protection");

  static void ask(Wiring wiring) {
    Outcome<ElectricalCode> code = wiring.code();
    if (code instanceof NotApplicable<ElectricalCode> unknown) {
      wiring.missing(ArcProtection.class, ARCS, unknown.reason());
    } else if (code.result().orElseThrow().isNec()) {
      new ArcQuestions(wiring).ask();
    }
  }

  private void ask() {
    Optional<Choice<ArcFault>> device = wiring.electrical().arcFault();
    if (device.isEmpty()) {
      missing(wiring.lacks("what protects the dc circuits against arcs", "arc-fault"));
    } else if (device.get().value() != ArcFault.NONE) {
      add(device.get(), highestV().orElse(0.0));
    } else {
      highestV().ifPresentOrElse(v -> add(device.get(), v), () -> missing(unknown()));
    }
  }

  /** The highest voltage of those strings that can be worked out. */
  private Optional<Double> highestV() {
    return wiring.electrical().strings().all().stream()
        .map(item -> ColdCase.of(wiring, item).cold())
        .flatMap(cold -> cold.result().stream())
        .map(cold -> StringVoltages.snapped(cold.whole().si()))
        .max(Double::compare);
  }

  private String unknown() {
    return wiring.electrical().strings().all().stream()
        .map(item -> ColdCase.of(wiring, item).cold())
        .filter(NotApplicable.class::isInstance)
        .map(cold -> ((NotApplicable<Cold>) cold).reason())
        .findFirst()
        .orElseGet(() -> wiring.lacks("the strings", "strings"));
  }

  private void add(Choice<ArcFault> device, double voltageV) {
    Limit from = wiring.limits().get("arc-fault-voltage-least");
    wiring
        .answers()
        .add(
            new ArcProtection(
                ARCS,
                device.at(),
                Units.VOLT,
                device.value() != ArcFault.NONE,
                voltageV,
                from.si(),
                Optional.of(from)));
  }

  private void missing(String reason) {
    wiring.missing(ArcProtection.class, ARCS, reason);
  }
}
