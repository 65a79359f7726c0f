package clampwise.calculation;

import clampwise.calc.trail.Measure;
import clampwise.units.Unit;
import java.util.Set;

/** Counts in which set of units the inputs were written. */
final class UnitVotes {

  private static final Set<String> IMPERIAL =
      Set.of(
          "in", "ft", "ft²", "lb", "lbf", "kip", "psf", "psi", "plf", "pcf", "lbf in", "lbf ft",
          "mph", "°F", "AWG", "kcmil");

  private static final Set<String> NEITHER =
      Set.of("", "%", "deg", "rad", "V", "kV", "A", "ohm", "s", "%/°C");

  private int imperial;
  private int metric;

  void add(Unit unit) {
    if (IMPERIAL.contains(unit.symbol())) {
      imperial++;
    } else if (!NEITHER.contains(unit.symbol()) && !unit.symbol().startsWith(":")) {
      metric++;
    }
  }

  /** The set that most units belong to; metric if as many belong to either. */
  Measure measure() {
    return imperial > metric ? Measure.IMPERIAL : Measure.METRIC;
  }
}
