package clampwise.calculation;

import static clampwise.calculation.WindInputs.AREA;
import static clampwise.calculation.WindInputs.BUILDING;
import static clampwise.calculation.WindInputs.EDITION;
import static clampwise.calculation.WindInputs.ENCLOSURE;
import static clampwise.calculation.WindInputs.EQUALISATION;
import static clampwise.calculation.WindInputs.HEIGHT;
import static clampwise.calculation.WindInputs.PLACE;
import static clampwise.calculation.WindInputs.READING;
import static clampwise.calculation.WindInputs.SITE;
import static clampwise.calculation.WindInputs.join;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.ArraySize;
import clampwise.calc.wind.Coefficients;
import clampwise.calc.wind.Directionality;
import clampwise.calc.wind.ExposedEdge;
import clampwise.calc.wind.PanelCondition;
import clampwise.calc.wind.PanelCondition.Answer;
import clampwise.calc.wind.PanelConditions;
import clampwise.calc.wind.PanelEqualisation;
import clampwise.calc.wind.PanelEquation;
import clampwise.calc.wind.PanelFactors;
import clampwise.calc.wind.PanelPressure;
import clampwise.calc.wind.PanelPressure.Panel;
import clampwise.calc.wind.PanelPressure.PanelLoad;
import clampwise.calc.wind.PanelSetup;
import clampwise.calc.wind.PanelSide;
import clampwise.calc.wind.Patch;
import clampwise.calc.wind.Velocity;
import clampwise.calc.wind.WindCode;
import clampwise.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Public calculations of wind on panels parallel to their roof, ASCE 7-16 and 7-22. */
final class PanelCalculations {

  private static final Input TOP_HEIGHT =
      Input.of(
          "top-height", "upper side of the panels above the roof", Dimension.LENGTH, 0.0, 10.0);
  private static final List<Input> SETUP =
      List.of(
          TOP_HEIGHT,
          Input.of("tilt", "slope between panel and roof", Dimension.ANGLE, 0.0, 1.5),
          Input.of("gap", "gap between panels", Dimension.LENGTH, 0.0, 10.0),
          Input.of("gap-spacing", "distance from gap to gap", Dimension.LENGTH, 0.0, 100.0),
          Input.of("edge-distance", "array to roof edge or ridge", Dimension.LENGTH, 0.0, 1e4));

  private PanelCalculations() {}

  static List<Calculation> all() {
    return List.of(conditions(), edgeFactor(), equalisation(), equation(), pressure());
  }

  private static Calculation conditions() {
    return new Calculation(
        "panel-conditions",
        "conditions of the method for panels parallel to the roof, ASCE 7 29.4.4, each answered",
        "limits are included",
        join(List.of(EDITION, ENCLOSURE), SETUP),
        PanelCalculations::conditions);
  }

  private static Calculation edgeFactor() {
    return new Calculation(
        "array-edge-factor",
        "array edge factor of panels parallel to the roof, ASCE 7 29.4.4",
        "uplift; one side of the array at a time",
        List.of(
            EDITION,
            HEIGHT,
            TOP_HEIGHT,
            Input.of("panel-length", "chord length of a panel", Dimension.LENGTH, 0.1, 20.0),
            Input.of("roof-edge", "array to the roof's edge", Dimension.LENGTH, 0.0, 1e4),
            Input.of("next-array", "array to the next array", Dimension.LENGTH, 0.0, 1e4)
                .orNothing(),
            Input.of("next-panel", "panel to the next panel", Dimension.LENGTH, 0.0, 1e4)
                .orNothing(),
            Input.of("inside", "array's edge inwards to the panel", Dimension.LENGTH, 0.0, 1e4)
                .unless("0 ft"),
            READING),
        PanelCalculations::edgeFactor);
  }

  private static Calculation equalisation() {
    return new Calculation(
        "equalisation-factor",
        "pressure equalisation factor of panels parallel to the roof, ASCE 7 figure 29.4-8",
        "areas above 0",
        List.of(EDITION, AREA, EQUALISATION),
        PanelCalculations::equalisation);
  }

  private static Calculation equation() {
    return new Calculation(
        "panel-equation",
        "pressure on panels parallel to the roof from its factors, ASCE 7 Eq. 29.4-7",
        "where the conditions of 29.4.4 are met; strength level",
        List.of(
            EDITION,
            Input.of("velocity-pressure", "as the edition prints it", Dimension.PRESSURE, 0.0, 1e5),
            Input.of("coefficient-up", "coefficient away", Dimension.NUMBER, -10.0, 0.0),
            Input.of("coefficient-down", "coefficient toward", Dimension.NUMBER, 0.0, 10.0)
                .unless("0"),
            Input.of("edge-factor", "array edge factor", Dimension.NUMBER, 1.0, 1.5).unless("1.5"),
            Input.of("equalisation-factor", "equalisation factor", Dimension.NUMBER, 0.1, 1.0)),
        PanelCalculations::equation);
  }

  private static Calculation pressure() {
    return new Calculation(
        "panel-wind-pressure",
        "design pressures on a panel parallel to the roof, from the wind speed, ASCE 7 29.4.4",
        "where a condition fails, roof components and cladding act on the panel; strength level",
        join(
            SITE,
            BUILDING,
            PLACE,
            List.of(ENCLOSURE),
            SETUP,
            List.of(
                Input.of("edge-factor", "array edge factor", Dimension.NUMBER, 1.0, 1.5)
                    .unless("1.5"),
                EQUALISATION)),
        PanelCalculations::pressure);
  }

  private static Outcome<List<Term>> conditions(Given given, Work work) {
    return new Result<>(
        answers(
            PanelConditions.of(
                WindInputs.code(given), WindInputs.enclosure(given), setup(given), work)));
  }

  private static List<Term> answers(List<PanelCondition> conditions) {
    return conditions.stream()
        .map(
            condition ->
                Term.number(
                    "met_" + condition.name().replace('-', '_'),
                    condition.sentence(),
                    condition.answer() == Answer.MET ? 1 : 0))
        .toList();
  }

  private static Outcome<List<Term>> edgeFactor(Given given, Work work) {
    PanelSide side =
        new PanelSide(
            given.number("roof-edge"),
            given.find("next-array").orElse(Double.POSITIVE_INFINITY),
            given.find("next-panel").orElse(Double.POSITIVE_INFINITY),
            given.number("inside"));
    ArraySize size =
        new ArraySize(
            given.number("top-height"), given.number("panel-length"), given.number("height"));
    double factor = ExposedEdge.of(WindInputs.code(given), side, size, work).factor();
    return WindCalculations.one(new PanelFactors(factor, 1).edgeTerm());
  }

  private static Outcome<List<Term>> equalisation(Given given, Work work) {
    return PanelEqualisation.of(WindInputs.code(given), new Patch("", given.number("area")), work)
        .then(factor -> WindCalculations.one(new PanelFactors(1, factor).equalisationTerm()));
  }

  private static Outcome<List<Term>> equation(Given given, Work work) {
    WindCode code = WindInputs.code(given);
    Velocity velocity = Directionality.leftFor(code, given.number("velocity-pressure"));
    Coefficients external =
        new Coefficients(given.number("coefficient-down"), given.number("coefficient-up"));
    PanelFactors factors =
        new PanelFactors(given.number("edge-factor"), given.number("equalisation-factor"));
    return new Result<>(PanelEquation.of(code, velocity, external, factors, work).terms());
  }

  private static Outcome<List<Term>> pressure(Given given, Work work) {
    WindCode code = WindInputs.code(given);
    Panel panel = new Panel(WindInputs.patch(given), given.number("edge-factor"), setup(given));
    return WindCalculations.velocity(code, given, work)
        .then(velocity -> PanelPressure.of(code, WindInputs.building(given), velocity, panel, work))
        .then(load -> new Result<>(terms(load)));
  }

  private static List<Term> terms(PanelLoad load) {
    List<Term> terms = new ArrayList<>(load.pressures().terms());
    terms.addAll(answers(load.conditions()));
    return terms;
  }

  private static PanelSetup setup(Given given) {
    return new PanelSetup(
        given.find("top-height"),
        given.find("tilt"),
        given.find("gap"),
        Optional.empty(),
        given.find("gap-spacing"),
        given.find("edge-distance"));
  }
}
