package clampwise.calculation;

import clampwise.calc.Outcome;
import clampwise.calc.snow.ExposureFactor;
import clampwise.calc.snow.FlatRoofSnow;
import clampwise.calc.snow.MinimumSnow;
import clampwise.calc.snow.RainOnSnow;
import clampwise.calc.snow.RoofSnow;
import clampwise.calc.snow.SlopeFactor;
import clampwise.calc.snow.SnowBasis;
import clampwise.calc.snow.SnowCase;
import clampwise.calc.snow.SnowDensity;
import clampwise.calc.snow.ThermalFactor;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.List;

/** Snow of ASCE 7-16 and 7-22 on one roof. */
final class SnowCalculations {

  private static final String BOTH = "ASCE 7-16 and 7-22";

  private SnowCalculations() {}

  static List<Calculation> all() {
    return List.of(
        exposureFactor(),
        thermalFactor(),
        flatRoof(),
        slopeFactor(),
        density(),
        minimum(),
        rain(),
        roof());
  }

  private static Calculation exposureFactor() {
    return new Calculation(
        "snow-exposure-factor",
        "Exposure factor Ce of a roof in snow",
        BOTH + ", table 7.3-1",
        List.of(SnowGiven.edition(), terrain(), roofExposure()),
        (given, work) -> exposure(new SnowGiven(given, work)).then(factor -> Results.last(work)));
  }

  private static Calculation thermalFactor() {
    return new Calculation(
        "snow-thermal-factor",
        "Thermal factor Ct of a roof in snow",
        "ASCE 7-16 table 7.3-2; ASCE 7-22 tables 7.3-2 and 7.3-3",
        List.of(SnowGiven.edition(), SnowGiven.ground(), condition(), SnowGiven.resistance()),
        (given, work) -> {
          thermal(new SnowGiven(given, work));
          return Results.last(work);
        });
  }

  private static Calculation flatRoof() {
    return new Calculation(
        "snow-flat-roof",
        "Flat roof snow load pf",
        BOTH + ", Eq. 7.3-1",
        List.of(
            SnowGiven.edition(),
            SnowGiven.ground(),
            SnowGiven.risk(),
            SnowGiven.exposure(),
            SnowGiven.thermal()),
        (given, work) -> {
          SnowBasis basis = new SnowGiven(given, work).basis();
          FlatRoofSnow.pa(
              basis, given.number("exposure-factor"), given.number("thermal-factor"), work);
          return Results.last(work);
        });
  }

  private static Calculation slopeFactor() {
    return new Calculation(
        "snow-slope-factor",
        "Slope factor Cs",
        BOTH + ", figure 7.4-1; slopes from 0 to 90 degrees",
        List.of(
            SnowGiven.edition(),
            SnowGiven.slope(),
            SnowGiven.thermal(),
            SnowGiven.slippery(),
            SnowGiven.obstructed(),
            SnowGiven.resistance(),
            SnowGiven.ventilated()),
        (given, work) -> {
          SnowGiven snow = new SnowGiven(given, work);
          SlopeFactor.of(
              snow.tables(),
              snow.number("slope"),
              snow.number("thermal-factor"),
              snow.surface(),
              work);
          return Results.last(work);
        });
  }

  private static Calculation density() {
    return new Calculation(
        "snow-density",
        "Density of the snow on a roof",
        BOTH + ", Eq. 7.7-1",
        List.of(SnowGiven.edition(), SnowGiven.ground(), SnowGiven.risk()),
        (given, work) -> {
          SnowDensity.newtonPerM3(new SnowGiven(given, work).basis(), work);
          return Results.last(work);
        });
  }

  private static Calculation minimum() {
    return new Calculation(
        "snow-minimum",
        "Minimum snow load of low slopes, a load case of its own",
        "ASCE 7-16, 7.3.4, and ASCE 7-22, 7.3.3; slopes below 15 degrees",
        List.of(SnowGiven.edition(), SnowGiven.ground(), SnowGiven.risk(), SnowGiven.slope()),
        (given, work) ->
            MinimumSnow.pa(new SnowGiven(given, work).basis(), given.number("slope"), work)
                .then(pa -> Results.last(work)));
  }

  private static Calculation rain() {
    return new Calculation(
        "snow-rain",
        "Rain-on-snow surcharge of the balanced load",
        BOTH + ", 7.10",
        List.of(
            SnowGiven.edition(),
            SnowGiven.ground(),
            SnowGiven.risk(),
            SnowGiven.slope(),
            SnowGiven.length("eave-to-ridge", "plan distance from eave to ridge")),
        (given, work) -> {
          SnowBasis basis = new SnowGiven(given, work).basis();
          RainOnSnow.pa(basis, given.number("slope"), given.number("eave-to-ridge"), work);
          return Results.last(work);
        });
  }

  private static Calculation roof() {
    List<Input> inputs = new ArrayList<>();
    inputs.addAll(List.of(SnowGiven.edition(), SnowGiven.ground(), SnowGiven.risk()));
    inputs.addAll(List.of(terrain(), roofExposure(), condition(), SnowGiven.resistance()));
    inputs.addAll(List.of(SnowGiven.ventilated(), SnowGiven.slippery(), SnowGiven.obstructed()));
    inputs.add(SnowGiven.slope());
    inputs.add(SnowGiven.length("eave-to-ridge", "plan distance from eave to ridge or high side"));
    inputs.add(Input.word("shape", "shape of the roof", Words.of(RoofSnow.Shape.class)));
    inputs.add(simpleRafters());
    inputs.add(SnowGiven.winterWind());
    return new Calculation(
        "snow-roof",
        "Snow load cases of a slope: balanced, minimum, unbalanced, on the plan area",
        BOTH + ", 7.3 to 7.6 and 7.10; snow on an array is an assumption, no standard rule",
        inputs,
        SnowCalculations::roof);
  }

  private static Outcome<List<Term>> roof(Given given, Work work) {
    SnowGiven snow = new SnowGiven(given, work);
    return exposure(snow)
        .then(
            exposure -> {
              double thermal = thermal(snow);
              RoofSnow.Roof roof =
                  new RoofSnow.Roof(
                      Words.choice(RoofSnow.Shape.class, given.word("shape")),
                      given.number("slope"),
                      given.number("eave-to-ridge"),
                      snow.is("simple-rafters"),
                      snow.surface());
              RoofSnow.Factors factors = new RoofSnow.Factors(exposure, thermal);
              return cases(RoofSnow.of(snow.basis(), roof, factors, work));
            });
  }

  private static Outcome<List<Term>> cases(RoofSnow snow) {
    if (snow.missing().isPresent()) {
      return Results.none(snow.missing().get());
    }
    List<Term> cases = new ArrayList<>();
    for (SnowCase each : snow.cases()) {
      String symbol = "p_" + (cases.size() + 1);
      cases.add(Term.pressure(symbol, each.name() + ", largest", each.atPa(0)));
    }
    return new Outcome.Result<>(cases);
  }

  static Input simpleRafters() {
    return Words.yesNo("simple-rafters", "simple members run from eave to ridge").unless("no");
  }

  private static Input terrain() {
    return Input.word(
        "terrain", "surface roughness and terrain", "B", "C", "D", "above-tree-line", "alaska");
  }

  private static Input roofExposure() {
    return Input.word(
        "roof-exposure", "how the roof stands in the wind", "fully", "partially", "sheltered");
  }

  private static Input condition() {
    return Input.word(
        "condition", "how warm the roof is kept", Words.of(ThermalFactor.Condition.class));
  }

  private static Outcome<Double> exposure(SnowGiven snow) {
    return ExposureFactor.of(
        snow.tables(),
        Words.choice(ExposureFactor.Terrain.class, snow.given().word("terrain")),
        Words.choice(ExposureFactor.RoofExposure.class, snow.given().word("roof-exposure")),
        snow.work());
  }

  private static double thermal(SnowGiven snow) {
    return ThermalFactor.of(snow.tables(), snow.warmth(), snow.number("ground-snow"), snow.work());
  }
}
