package clampwise.calculation;

import static clampwise.calculation.WindInputs.BUILDING;
import static clampwise.calculation.WindInputs.EDITION;
import static clampwise.calculation.WindInputs.ENCLOSURE;
import static clampwise.calculation.WindInputs.EXPOSURE;
import static clampwise.calculation.WindInputs.GROUND;
import static clampwise.calculation.WindInputs.HEIGHT;
import static clampwise.calculation.WindInputs.METHOD;
import static clampwise.calculation.WindInputs.PLACE;
import static clampwise.calculation.WindInputs.SITE;
import static clampwise.calculation.WindInputs.join;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.EffectiveArea;
import clampwise.calc.wind.Exposure;
import clampwise.calc.wind.ExposureCoefficient;
import clampwise.calc.wind.ExternalCoefficient;
import clampwise.calc.wind.GroundElevation;
import clampwise.calc.wind.Velocity;
import clampwise.calc.wind.VelocityPressure;
import clampwise.calc.wind.WindCode;
import clampwise.calc.wind.WindSite;
import clampwise.calc.wind.ZoneDimension;
import clampwise.calc.wind.ZonePressure;
import clampwise.units.Dimension;
import java.util.List;
import java.util.stream.Stream;

/** Public calculations of wind on roofs, ASCE 7-16 and 7-22. */
final class WindCalculations {

  private WindCalculations() {}

  static List<Calculation> all() {
    return Stream.of(air(), roof(), PanelCalculations.all()).flatMap(List::stream).toList();
  }

  private static List<Calculation> air() {
    return List.of(
        new Calculation(
            "exposure-coefficient",
            "velocity pressure exposure coefficient of ASCE 7",
            "by table up to 500 ft, by formula up to the gradient height",
            join(List.of(EDITION, EXPOSURE, HEIGHT), METHOD),
            WindCalculations::exposure),
        new Calculation(
            "ground-elevation-factor",
            "ground elevation factor of ASCE 7",
            "all elevations; 1 is always permitted",
            join(List.of(EDITION), GROUND),
            WindCalculations::ground),
        new Calculation(
            "velocity-pressure",
            "velocity pressure of ASCE 7 at a height",
            "as the exposure coefficient; 7-22 gives it without the directionality factor",
            SITE,
            WindCalculations::velocity));
  }

  private static List<Calculation> roof() {
    return List.of(
        new Calculation(
            "wind-zone-widths",
            "widths of the wind zones of a roof, ASCE 7",
            "h up to 60 ft; gable and hip up to 45 degrees, monoslope up to 30",
            join(List.of(EDITION, HEIGHT), BUILDING),
            WindCalculations::widths),
        new Calculation(
            "external-coefficient",
            "external pressure coefficients of a roof zone, ASCE 7",
            "the figures of flat, gable, hip and monoslope roofs; hip above 27 degrees of 7-16 left out",
            join(List.of(EDITION, HEIGHT), BUILDING, PLACE),
            WindCalculations::external),
        new Calculation(
            "effective-wind-area",
            "effective wind area of an element, ASCE 7",
            "span and tributary width above 0",
            List.of(
                EDITION,
                Input.of("span", "span", Dimension.LENGTH, 1e-3, 1000.0),
                Input.of("width", "tributary width", Dimension.LENGTH, 1e-3, 1000.0)),
            WindCalculations::area),
        new Calculation(
            "roof-wind-pressure",
            "design pressures of roof components and cladding, ASCE 7",
            "enclosed, partially open and partially enclosed buildings; strength level",
            join(SITE, BUILDING, PLACE, List.of(ENCLOSURE)),
            WindCalculations::pressure));
  }

  private static Outcome<List<Term>> exposure(Given given, Work work) {
    return ExposureCoefficient.of(
            WindInputs.code(given), WindInputs.exposure(given), given.number("height"), work)
        .then(k -> one(Term.number("K_z", "velocity pressure exposure coefficient", k)));
  }

  private static Outcome<List<Term>> ground(Given given, Work work) {
    WindSite site =
        new WindSite(1, Exposure.C, 1, given.find("ground-factor"), given.find("ground-elevation"));
    double factor = GroundElevation.of(WindInputs.code(given), site, work);
    return one(Term.number("K_e", "ground elevation factor", factor));
  }

  private static Outcome<List<Term>> velocity(Given given, Work work) {
    return velocity(WindInputs.code(given), given, work)
        .then(
            velocity ->
                new Result<>(
                    List.of(
                        velocity.term(),
                        Term.pressure(
                            "q_h_K_d", "with directionality factor", velocity.loadPa()))));
  }

  static Outcome<Velocity> velocity(WindCode code, Given given, Work work) {
    return VelocityPressure.of(code, WindInputs.site(given), given.number("height"), work);
  }

  private static Outcome<List<Term>> widths(Given given, Work work) {
    return ZoneDimension.of(WindInputs.code(given), WindInputs.roof(given), work)
        .then(
            widths ->
                new Result<>(
                    List.of(
                        Term.length("edge", "width of the edge zone", widths.edgeM()),
                        Term.length("corner", "width of the corner's legs", widths.cornerM()))));
  }

  private static Outcome<List<Term>> external(Given given, Work work) {
    return ExternalCoefficient.of(
            WindInputs.code(given), WindInputs.building(given), WindInputs.patch(given), work)
        .then(found -> new Result<>(found.terms()));
  }

  private static Outcome<List<Term>> area(Given given, Work work) {
    return EffectiveArea.of(
            WindInputs.code(given), given.number("span"), given.number("width"), work)
        .then(areaM2 -> one(Term.area("A", "effective wind area", areaM2)));
  }

  private static Outcome<List<Term>> pressure(Given given, Work work) {
    WindCode code = WindInputs.code(given);
    return velocity(code, given, work)
        .then(
            velocity ->
                ZonePressure.of(
                    code, WindInputs.building(given), velocity, WindInputs.patch(given), work))
        .then(pressures -> new Result<>(pressures.terms()));
  }

  static Outcome<List<Term>> one(Term term) {
    return new Result<>(List.of(term));
  }
}
