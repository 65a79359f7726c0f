package clampwise.calculation;

import clampwise.calc.Outcome;
import clampwise.calc.snow.DriftHeight;
import clampwise.calc.snow.SlidingSnow;
import clampwise.calc.snow.SnowBasis;
import clampwise.calc.snow.SnowDensity;
import clampwise.calc.snow.StepDrift;
import clampwise.calc.snow.UnbalancedSnow;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.List;

/** Snow of ASCE 7-16 and 7-22 that wind or gravity brings from elsewhere. */
final class DriftCalculations {

  private static final String BOTH = "ASCE 7-16 and 7-22, ";

  private DriftCalculations() {}

  static List<Calculation> all() {
    return List.of(height(), unbalanced(), step(), sliding());
  }

  private static Calculation height() {
    return new Calculation(
        "snow-drift-height",
        "Height of a snow drift",
        "ASCE 7-16 figure 7.6-1, ASCE 7-22 Eq. 7.6-1",
        List.of(
            SnowGiven.edition(),
            SnowGiven.ground(),
            SnowGiven.risk(),
            SnowGiven.winterWind(),
            SnowGiven.length("fetch", "length of roof upwind")),
        (given, work) -> {
          SnowBasis basis = new SnowGiven(given, work).basis();
          double densityNm3 = SnowDensity.newtonPerM3(basis, work);
          return DriftHeight.m(basis, given.number("fetch"), densityNm3, "h_d", work)
              .then(m -> Results.last(work));
        });
  }

  private static Calculation unbalanced() {
    return new Calculation(
        "snow-unbalanced",
        "Unbalanced snow of a hip or gable roof",
        BOTH + "7.6.1; slopes from 2.38 to 30.2 degrees",
        List.of(
            SnowGiven.edition(),
            SnowGiven.ground(),
            SnowGiven.risk(),
            SnowGiven.winterWind(),
            SnowGiven.slope(),
            SnowGiven.length("eave-to-ridge", "plan distance from eave to ridge"),
            SnowGiven.pressure("balanced", "balanced snow load"),
            SnowCalculations.simpleRafters()),
        DriftCalculations::unbalanced);
  }

  private static Outcome<List<Term>> unbalanced(Given given, Work work) {
    SnowGiven snow = new SnowGiven(given, work);
    SnowBasis basis = snow.basis();
    UnbalancedSnow.Ridge ridge =
        new UnbalancedSnow.Ridge(
            given.number("slope"),
            given.number("eave-to-ridge"),
            snow.is("simple-rafters"),
            given.number("balanced"),
            SnowDensity.newtonPerM3(basis, work));
    return UnbalancedSnow.of(basis, ridge, work)
        .then(
            loads ->
                Results.of(
                    Term.pressure("p_wind", "windward slope", loads.windwardPa()),
                    Term.pressure("p_lee", "leeward slope near the ridge", loads.nearRidgePa()),
                    Term.length("x_d", "reach from the ridge", loads.nearRidgeM())));
  }

  private static Calculation step() {
    return new Calculation(
        "snow-step-drift",
        "Drifts on a lower roof at a step or a parapet, on top of the balanced load",
        BOTH + "7.7.1 and 7.8",
        List.of(
            SnowGiven.edition(),
            SnowGiven.ground(),
            SnowGiven.risk(),
            SnowGiven.winterWind(),
            SnowGiven.length("rise", "height of the step or parapet"),
            SnowGiven.length("upper-fetch", "length of the upper roof").orNothing(),
            SnowGiven.length("lower-fetch", "length of the lower roof").orNothing(),
            SnowGiven.pressure("balanced", "balanced snow load of the lower roof"),
            SnowGiven.length("from-wall", "plan distance from the wall").unless("0 m")),
        DriftCalculations::step);
  }

  private static Outcome<List<Term>> step(Given given, Work work) {
    StepDrift.Step step =
        new StepDrift.Step(
            given.number("rise"),
            given.find("upper-fetch"),
            given.find("lower-fetch"),
            given.number("balanced"));
    return StepDrift.of(new SnowGiven(given, work).basis(), step, work)
        .then(drift -> new Outcome.Result<>(results(drift, given.number("from-wall"))));
  }

  private static List<Term> results(StepDrift step, double fromWallM) {
    List<Term> terms = new ArrayList<>();
    for (StepDrift.Drift drift : step.drifts()) {
      String side = drift.name().equals("leeward") ? "_lee" : "_wind";
      terms.add(Term.length("h" + side, drift.name() + " height", drift.heightM()));
      terms.add(Term.length("w" + side, drift.name() + " width", drift.widthM()));
      terms.add(Term.pressure("p" + side, drift.name() + " load at the wall", drift.peakPa()));
    }
    terms.add(
        Term.pressure("p_x", "largest drift load at the distance", step.surchargePa(fromWallM)));
    return terms;
  }

  private static Calculation sliding() {
    return new Calculation(
        "snow-sliding",
        "Snow that slides from a higher roof, on top of the balanced load",
        BOTH + "7.9",
        List.of(
            SnowGiven.edition(),
            SnowGiven.pressure("flat-roof-snow", "flat roof snow load of the upper roof"),
            SnowGiven.length("eave-to-ridge", "plan distance from eave to ridge of the upper roof"),
            SnowGiven.slope(),
            SnowGiven.slippery()),
        (given, work) -> {
          SnowGiven snow = new SnowGiven(given, work);
          SlidingSnow.Upper upper =
              new SlidingSnow.Upper(
                  given.number("flat-roof-snow"),
                  given.number("eave-to-ridge"),
                  given.number("slope"),
                  snow.is("slippery"));
          return SlidingSnow.of(snow.tables(), upper, work).then(s -> Results.last(work));
        });
  }
}
