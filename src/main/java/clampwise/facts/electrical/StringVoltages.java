package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.electrical.ColdString;
import clampwise.facts.electrical.ColdCase.Cold;
import clampwise.facts.electrical.VoltageLimits.Bound;
import clampwise.source.Span;
import clampwise.units.Units;
import java.util.Optional;

/** Holds the voltage of each string in the cold against what limits it. */
final class StringVoltages {

  private static final double STEPS_PER_VOLT = 1e6;

  private StringVoltages() {}

  static void ask(Wiring wiring) {
    if (wiring.electrical().strings().isEmpty()) {
      String reason = wiring.lacks("the strings", "strings");
      wiring.missing(StringVoltage.class, Wiring.ELECTRICAL.part("strings"), reason);
    }
    wiring.electrical().strings().all().forEach(item -> ask(ColdCase.of(wiring, item)));
  }

  private static void ask(ColdCase string) {
    VoltageLimits limits = new VoltageLimits(string);
    Outcome<Cold> cold = string.cold();
    if (cold instanceof NotApplicable<Cold> unknown) {
      missing(string, unknown.reason());
      return;
    }
    Optional<Bound> least = limits.least();
    Optional<String> unknown = limits.unknown();
    double voltageV = snapped(cold.result().orElseThrow().whole().si());
    boolean beyond = least.filter(bound -> voltageV > bound.v()).isPresent();
    if (unknown.isPresent() && !beyond) {
      missing(string, unknown.get());
    } else {
      string.wiring().answers().add(fact(string, cold.result().orElseThrow(), least.orElseThrow()));
    }
  }

  private static StringVoltage fact(ColdCase string, Cold cold, Bound bound) {
    Span at = string.string().inSeries().at();
    return new StringVoltage(
        string.subject(),
        at,
        Units.VOLT,
        string.name().value(),
        string.string().inSeries().value(),
        string.moduleName().orElse(""),
        string.lowestInWords(),
        cold.method(),
        snapped(cold.whole().si()),
        bound.by(),
        bound.v(),
        fitting(ColdString.most(cold.each().si(), bound.v())),
        ShownWork.of("Voltage of string " + string.name(), cold.work()),
        bound.from());
  }

  private static String fitting(int most) {
    return most == 0 ? "another module: not one of these fits" : most + " in series";
  }

  private static void missing(ColdCase string, String reason) {
    string.wiring().missing(StringVoltage.class, string.subject(), reason, string.name().at());
  }

  /** Rounded far below what a meter shows, so that a voltage at its limit is at its limit. */
  static double snapped(double v) {
    return Math.rint(v * STEPS_PER_VOLT) / STEPS_PER_VOLT;
  }
}
