package clampwise.calculation;

import static clampwise.units.Dimension.FORCE;
import static clampwise.units.Dimension.LENGTH;
import static clampwise.units.Dimension.NUMBER;
import static clampwise.units.Dimension.PRESSURE;

import clampwise.calc.Outcome;
import clampwise.calc.statics.ConcentratedLoad;
import clampwise.calc.statics.DeadLoadScreen;
import clampwise.calc.trail.Term;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import java.util.List;

/** What an array asks of the roof that was there before. */
final class RoofCalculations {

  private final Limits limits;

  RoofCalculations(Limits limits) {
    this.limits = limits;
  }

  List<Calculation> all() {
    return List.of(deadLoadScreen(), concentratedLoad());
  }

  private Calculation deadLoadScreen() {
    Limit most = limits.get("gravity-increase-most");
    return new Calculation(
        "dead-load-screen",
        "Whether the array's weight calls for a check of the roof's members",
        "a screen, never a check; members that carry area in proportion",
        List.of(
            Input.of("dead", "roof's own dead load", PRESSURE, 0.0),
            Input.of("live", "live load or snow of the roof's design", PRESSURE, 1e-3),
            Input.of("added", "dead load of the array", PRESSURE, 0.0),
            Input.of("most", "greatest increase without a check", NUMBER, 0.0, 1.0)
                .unless(Plain.text(most))),
        (given, work) -> {
          DeadLoadScreen screen =
              new DeadLoadScreen(given.number("dead"), given.number("live"), given.number("added"));
          Term limit =
              Term.number("i_1", "greatest increase without a check", given.number("most"));
          return new Outcome.Result<>(List.of(screen.show(limit, most.source(), work)));
        });
  }

  private Calculation concentratedLoad() {
    Limit load = limits.get("concentrated-load");
    Limit over = limits.get("panel-span-over-sag-least");
    return new Calculation(
        "concentrated-load",
        "Sag of a panel under a person, from a load test of the panel",
        "elastic panel; simple span; " + over.validity(),
        List.of(
            Input.of("span", "span between supports", LENGTH, 0.01),
            Input.of("test-load", "test load in the middle of the same span", FORCE, 1e-3),
            Input.of("test-sag", "sag under the test load", LENGTH, 0.0),
            Input.of("load", "concentrated load", FORCE, 0.0).unless(Plain.text(load))),
        (given, work) -> {
          double loadN = given.number("load");
          if (loadN > given.number("test-load") * (1 + 1e-9)) {
            return new Outcome.NotApplicable<>(
                "the load is greater than that of the test; beyond it the panel may not be elastic");
          }
          ConcentratedLoad panel =
              new ConcentratedLoad(
                  given.number("span"), given.number("test-load"), given.number("test-sag"));
          return new Outcome.Result<>(List.of(panel.show(loadN, over.si(), over.source(), work)));
        });
  }
}
