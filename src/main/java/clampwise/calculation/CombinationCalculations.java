package clampwise.calculation;

import clampwise.calc.AsceEdition;
import clampwise.calc.EditionTables;
import clampwise.calc.Outcome;
import clampwise.calc.combination.Actions;
import clampwise.calc.combination.CombinationWork;
import clampwise.calc.combination.CombinationWork.Part;
import clampwise.calc.combination.Combinations;
import clampwise.calc.combination.Effect;
import clampwise.calc.combination.Governing;
import clampwise.calc.combination.Method;
import clampwise.calc.combination.PartialFactors;
import clampwise.calc.combination.SlopeComponents;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.TablesReader;
import clampwise.units.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Load combinations of ASCE 7 and EN 1990 on a slope. */
final class CombinationCalculations {

  private static final String FILE = "combinations.yaml";

  private CombinationCalculations() {}

  static List<Calculation> all() {
    return List.of(components(), asce(), eurocode());
  }

  private static Calculation components() {
    return new Calculation(
        "slope-components",
        "A vertical load across a slope and down it, by sloped area",
        "slopes from 0 to 90 degrees",
        List.of(
            Input.of("load", "vertical load", Dimension.PRESSURE),
            Input.word("by", "area that the load is given for", "slope", "plan"),
            slope()),
        (given, work) -> {
          Term load = Term.pressure("q", "load", given.number("load"));
          Effect effect =
              given.word("by").equals("plan")
                  ? SlopeComponents.onPlan(load, given.number("slope"), work)
                  : SlopeComponents.onSlope(load, given.number("slope"), work);
          return Results.of(
              Term.pressure("q_n", "across the surface", effect.normal()),
              Term.pressure("q_s", "down the slope", effect.along()));
        });
  }

  private static Calculation asce() {
    List<Input> inputs = new ArrayList<>();
    inputs.add(SnowGiven.edition());
    inputs.add(Input.word("method", "allowable stress or strength design", Words.of(Method.class)));
    inputs.addAll(loads());
    inputs.add(load("live", "live load"));
    inputs.add(load("rain", "rain, on the plan area"));
    inputs.add(
        Input.of(
                "companion-snow",
                "factor of snow beside other leading loads in the strength design of 7-22",
                Dimension.NUMBER,
                0.0,
                1.0)
            .orNothing());
    return new Calculation(
        "load-combinations",
        "Governing load combinations across a slope and down it, by sloped area",
        "ASCE 7-16 and 7-22, 2.3.1 and 2.4.1, without seismic, fluid, soil and ice loads; snow of"
            + " 7-22 is of strength level",
        inputs,
        CombinationCalculations::asce);
  }

  private static Outcome<List<Term>> asce(Given given, Work work) {
    AsceEdition edition = Words.choice(AsceEdition.class, given.word("edition"));
    EditionTables tables = new EditionTables(edition, TablesReader.read(FILE).byKey());
    Combinations shipped =
        Combinations.of(tables, Words.choice(Method.class, given.word("method")));
    Combinations combinations =
        given.find("companion-snow").map(shipped::withCompanionSnow).orElse(shipped);
    double slopeRad = given.number("slope");
    Effect live =
        SlopeComponents.onSlope(
            Term.pressure("L", "live load", given.number("live")), slopeRad, work);
    Effect rain =
        SlopeComponents.onPlan(Term.pressure("R", "rain", given.number("rain")), slopeRad, work);
    Actions actions = actions(given, work);
    return governing(combinations, actions.withLive(live, actions.roofLive()).withRain(rain), work);
  }

  private static Calculation eurocode() {
    List<Input> inputs = new ArrayList<>(loads());
    inputs.add(factor("gamma-dead", "partial factor of dead load where it adds"));
    inputs.add(factor("gamma-dead-favourable", "partial factor of dead load where it helps"));
    inputs.add(factor("gamma-variable", "partial factor of snow, wind and imposed load"));
    inputs.add(factor("psi-snow", "combination factor of snow"));
    inputs.add(factor("psi-wind", "combination factor of wind"));
    return new Calculation(
        "load-combinations-en",
        "Governing design combinations across a slope and down it, by sloped area",
        "EN 1990, expression 6.10; recommended factors stand where none is given",
        inputs,
        CombinationCalculations::eurocode);
  }

  private static Outcome<List<Term>> eurocode(Given given, Work work) {
    PartialFactors.Given factors =
        new PartialFactors.Given(
            given.find("gamma-dead"),
            given.find("gamma-dead-favourable"),
            given.find("gamma-variable"),
            given.find("psi-snow"),
            given.find("psi-wind"));
    PartialFactors partial =
        PartialFactors.of(TablesReader.read(FILE).get("en-factors"), factors, work);
    return governing(Combinations.of(partial), actions(given, work), work);
  }

  private static Outcome<List<Term>> governing(
      Combinations combinations, Actions actions, Work work) {
    Governing governing = combinations.governing(actions);
    CombinationWork lines = new CombinationWork(actions, Dimension.PRESSURE, work);
    double up = lines.write(governing.up(), Part.UP);
    double down = lines.write(governing.down(), Part.DOWN);
    double along = lines.write(governing.along(), Part.ALONG);
    return Results.of(
        Term.pressure("q_up", governing.up().name(), up),
        Term.pressure("q_down", governing.down().name(), down),
        Term.pressure("q_along", governing.along().name(), along));
  }

  private static Actions actions(Given given, Work work) {
    double slopeRad = given.number("slope");
    Term dead = Term.pressure("D", "dead load", given.number("dead"));
    Term snow = Term.pressure("S", "snow", given.number("snow"));
    Term roofLive = Term.pressure("Lr", "roof live load", given.number("roof-live"));
    return Actions.of(SlopeComponents.onSlope(dead, slopeRad, work))
        .withSnow(SlopeComponents.onPlan(snow, slopeRad, work))
        .withLive(Effect.NONE, SlopeComponents.onPlan(roofLive, slopeRad, work))
        .withWind(given.number("wind-toward"), given.number("wind-away"));
  }

  private static List<Input> loads() {
    return List.of(
        Input.of("dead", "dead load by sloped area", Dimension.PRESSURE, 0.0, Double.MAX_VALUE),
        load("snow", "snow, on the plan area"),
        load("roof-live", "live or imposed load of the roof, on the plan area"),
        load("wind-toward", "wind toward the surface"),
        Input.of(
                "wind-away",
                "wind away from the surface, negative",
                Dimension.PRESSURE,
                -Double.MAX_VALUE,
                0.0)
            .unless("0 Pa"),
        slope().unless("0 deg"));
  }

  private static Input load(String name, String meaning) {
    return Input.of(name, meaning, Dimension.PRESSURE, 0.0, Double.MAX_VALUE).unless("0 Pa");
  }

  private static Input factor(String name, String meaning) {
    return Input.of(name, meaning, Dimension.NUMBER, 0.0, 3.0).orNothing();
  }

  private static Input slope() {
    return Input.of("slope", "slope of the surface", Dimension.ANGLE, 0.0, Math.PI / 2);
  }
}
