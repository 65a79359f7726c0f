package clampwise.calculation;

import clampwise.calc.Outcome;
import clampwise.calc.en.EnDrift;
import clampwise.calc.en.EnSnow;
import clampwise.calc.en.EnTables;
import clampwise.calc.en.SnowShape;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.TablesReader;
import clampwise.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Snow of EN 1991-1-3. */
final class EurocodeSnowCalculations {

  private static final double STEEPEST_RAD = Math.PI / 2;

  private EurocodeSnowCalculations() {}

  static List<Calculation> all() {
    return List.of(snow(), valley(), step(), obstruction());
  }

  private static Calculation snow() {
    return new Calculation(
        "en-snow",
        "Snow load cases of a slope, on the plan area",
        "EN 1991-1-3, 5.3.2 and 5.3.3; slopes from 0 to 90 degrees",
        List.of(
            ground(),
            exposure(),
            thermal(),
            Input.of("pitch", "pitch of the slope", Dimension.ANGLE, 0.0, STEEPEST_RAD),
            Input.of("other-pitch", "pitch beyond the ridge", Dimension.ANGLE, 0.0, STEEPEST_RAD)
                .orNothing(),
            Words.yesNo("held", "guards, a parapet or the array keep snow from sliding")
                .unless("yes")),
        EurocodeSnowCalculations::snow);
  }

  private static Outcome<List<Term>> snow(Given given, Work work) {
    EnSnow.Roof roof =
        new EnSnow.Roof(
            given.number("pitch"), given.find("other-pitch"), given.word("held").equals("yes"));
    return EnSnow.of(tables(), site(given), roof, work)
        .then(
            snow -> {
              List<Term> terms = new ArrayList<>();
              for (EnSnow.Case each : snow.cases()) {
                String symbol = "s_" + (terms.size() + 1);
                terms.add(Term.pressure(symbol, each.name() + ", this slope", each.pa()));
              }
              return new Outcome.Result<>(terms);
            });
  }

  private static Calculation valley() {
    return new Calculation(
        "en-snow-valley",
        "Shape coefficient of snow in a valley",
        "EN 1991-1-3, table 5.2; pitches up to 60 degrees",
        List.of(Input.of("pitch", "mean pitch", Dimension.ANGLE, 0.0, Math.PI / 3)),
        (given, work) -> {
          SnowShape.mu2(tables(), given.number("pitch"), work);
          return Results.last(work);
        });
  }

  private static Calculation step() {
    return new Calculation(
        "en-snow-step-drift",
        "Snow on a lower roof that adjoins a taller building",
        "EN 1991-1-3, 5.3.6",
        List.of(
            ground(),
            exposure(),
            thermal(),
            length("rise", "height of the step"),
            length("upper-length", "plan length of the upper roof"),
            length("lower-length", "plan length of the lower roof"),
            Input.of("upper-pitch", "pitch of the upper slope", Dimension.ANGLE, 0.0, STEEPEST_RAD)
                .unless("0 deg"),
            length("upper-slope-length", "plan length of the upper slope").unless("0 m"),
            length("from-wall", "plan distance from the wall").unless("0 m")),
        EurocodeSnowCalculations::step);
  }

  private static Outcome<List<Term>> step(Given given, Work work) {
    EnDrift.Upper upper =
        new EnDrift.Upper(given.number("upper-pitch"), given.number("upper-slope-length"));
    EnDrift.Step step =
        new EnDrift.Step(
            given.number("rise"),
            given.number("upper-length"),
            given.number("lower-length"),
            Optional.of(upper));
    return EnDrift.atStep(tables(), site(given), step, work).then(drift -> results(drift, given));
  }

  private static Calculation obstruction() {
    return new Calculation(
        "en-snow-obstruction",
        "Snow at a projection, an obstruction or a parapet of a nearly flat roof",
        "EN 1991-1-3, 6.2",
        List.of(
            ground(),
            exposure(),
            thermal(),
            length("rise", "height of the obstruction"),
            length("from-wall", "plan distance from the obstruction").unless("0 m")),
        (given, work) ->
            EnDrift.atObstruction(tables(), site(given), given.number("rise"), work)
                .then(drift -> results(drift, given)));
  }

  private static Outcome<List<Term>> results(EnDrift drift, Given given) {
    return Results.of(
        Term.pressure("s_wall", "snow at the wall", drift.wallPa()),
        Term.length("l_s", "length of the drift", drift.lengthM()),
        Term.pressure("s_x", "snow at the distance", drift.atPa(given.number("from-wall"))));
  }

  private static EnSnow.Site site(Given given) {
    return new EnSnow.Site(
        given.number("ground-snow"),
        given.number("exposure-coefficient"),
        given.number("thermal-coefficient"));
  }

  private static Input ground() {
    return Input.of("ground-snow", "characteristic ground snow", Dimension.PRESSURE, 0.0, 50_000.0);
  }

  private static Input exposure() {
    return number("exposure-coefficient", "exposure coefficient Ce");
  }

  private static Input thermal() {
    return number("thermal-coefficient", "thermal coefficient Ct");
  }

  private static Input number(String name, String meaning) {
    return Input.of(name, meaning, Dimension.NUMBER, 0.0, 2.0).unless("1");
  }

  private static Input length(String name, String meaning) {
    return Input.of(name, meaning, Dimension.LENGTH, 0.0, 1000.0);
  }

  private static EnTables tables() {
    return EnTables.of(TablesReader.read("en-snow.yaml").byKey());
  }
}
