package clampwise.calculation;

import clampwise.calc.Outcome;
import clampwise.calc.en.EnRoof;
import clampwise.calc.en.EnTables;
import clampwise.calc.en.PeakPressure;
import clampwise.calc.en.RoofWind;
import clampwise.calc.en.WindDirection;
import clampwise.calc.en.ZoneCoefficients;
import clampwise.calc.en.ZonePressure;
import clampwise.calc.en.ZoneSizes;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.TablesReader;
import clampwise.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Wind of EN 1991-1-4. */
final class EurocodeCalculations {

  private static final double STEEPEST_RAD = Math.PI / 2;

  private EurocodeCalculations() {}

  static List<Calculation> all() {
    return List.of(peakPressure(), zoneSizes(), coefficient(), pressureAt());
  }

  private static Calculation peakPressure() {
    return new Calculation(
        "en-peak-pressure",
        "Peak velocity pressure of wind",
        "EN 1991-1-4, section 4; heights up to 200 m",
        List.of(
            Input.word("terrain", "terrain category", "0", "I", "II", "III", "IV"),
            Input.of("wind-speed", "fundamental basic wind velocity", Dimension.SPEED, 0.0, 100.0),
            Input.of("height", "reference height", Dimension.LENGTH, 0.0, 200.0),
            number("direction-factor", "directional factor").unless("1"),
            number("season-factor", "seasonal factor").unless("1"),
            number("orography-factor", "orography factor").unless("1"),
            number("terrain-factor", "terrain factor of the national annex").orNothing(),
            number("air-density", "density of air in kg/m³").orNothing(),
            number("turbulence-factor", "turbulence factor").orNothing()),
        (given, work) -> {
          PeakPressure.Site site = new PeakPressure.Site(annex(given), work);
          return PeakPressure.of(
                  wind(EnTables.Reading.SEVERE),
                  given.word("terrain"),
                  given.number("wind-speed"),
                  given.number("height"),
                  site)
              .then(
                  peak ->
                      Results.of(
                          Term.pressure("q_b", "basic velocity pressure", peak.basicPa()),
                          Term.pressure("q_p", "peak velocity pressure", peak.peakPa())));
        });
  }

  private static PeakPressure.Annex annex(Given given) {
    return new PeakPressure.Annex(
        given.number("direction-factor"),
        given.number("season-factor"),
        given.number("orography-factor"),
        given.find("terrain-factor"),
        given.find("air-density"),
        given.find("turbulence-factor"));
  }

  private static Calculation zoneSizes() {
    return new Calculation(
        "en-zone-sizes",
        "Sizes of the wind zones of a roof for one wind direction",
        "EN 1991-1-4, figures 7.6 to 7.9; rectangular plans",
        List.of(
            length("width", "plan size of the building across the wind"),
            length("height", "height of the roof")),
        (given, work) -> {
          EnTables tables = wind(EnTables.Reading.SEVERE);
          ZoneSizes sizes =
              ZoneSizes.of(tables, given.number("width"), given.number("height"), work);
          return Results.of(
              Term.length("e_w", "length e", sizes.lengthM()),
              Term.length("x_F", "length of a corner", sizes.cornerM()),
              Term.length("y_F", "depth of the windward strip", sizes.stripM()),
              Term.length("y_H", "end of the middle", sizes.middleM()));
        });
  }

  private static Calculation coefficient() {
    return new Calculation(
        "en-roof-coefficient",
        "External pressure coefficients of a roof zone",
        "EN 1991-1-4, tables 7.2, 7.3 and 7.4",
        List.of(
            shape(),
            pitch(),
            direction(),
            Input.word("zone", "zone", "F", "F-up", "F-low", "G", "H", "I", "J"),
            area(),
            number("parapet-ratio", "height of the parapet over the roof's").unless("0"),
            reading()),
        EurocodeCalculations::coefficient);
  }

  private static Outcome<List<Term>> coefficient(Given given, Work work) {
    EnTables tables = wind(reading(given));
    EnRoof.Shape shape = Words.choice(EnRoof.Shape.class, given.word("shape"));
    EnRoof roof =
        EnRoof.onePlane(shape, given.number("pitch"), 1, 1, 1)
            .withParapet(given.number("parapet-ratio"));
    Optional<String> outside = ZoneCoefficients.outside(tables, roof);
    if (outside.isPresent()) {
      return Results.none(outside.get());
    }
    ZoneCoefficients zones = new ZoneCoefficients(tables, roof, given.number("area"));
    WindDirection direction = Words.choice(WindDirection.class, given.word("direction"));
    String zone = given.word("zone");
    if (!zones.zones(direction).contains(zone)) {
      return Results.none("this roof has no zone " + zone + " for this wind direction");
    }
    List<Term> terms = new ArrayList<>();
    zones
        .suction(direction, zone, work)
        .ifPresent(c -> terms.add(Term.number("c_up", "suction coefficient", c)));
    zones
        .pressure(direction, zone, work)
        .ifPresent(c -> terms.add(Term.number("c_down", "pressure coefficient", c)));
    return new Outcome.Result<>(terms);
  }

  private static Calculation pressureAt() {
    return new Calculation(
        "en-roof-pressure",
        "Zone and wind pressure at a point of a roof plane, for one wind direction",
        "EN 1991-1-4, 7.2.3 to 7.2.5; using the roof's coefficients for modules is an assumption",
        List.of(
            shape(),
            pitch(),
            length("along", "plan size along the eave"),
            length("across", "plan size of the building across the eave"),
            length("depth", "plan distance from eave to ridge or high edge"),
            length("height", "height of the roof"),
            length("parapet", "height of the parapet").unless("0 m"),
            Input.of("peak-pressure", "peak velocity pressure", Dimension.PRESSURE, 0.0, 20_000.0),
            area(),
            direction(),
            length("at-along", "the point, from the left end of the eave"),
            length("at-up", "the point, up the slope from the eave"),
            reading()),
        EurocodeCalculations::pressureAt);
  }

  private static Outcome<List<Term>> pressureAt(Given given, Work work) {
    EnTables tables = wind(reading(given));
    EnRoof roof = roof(given);
    double peakPa = given.number("peak-pressure");
    WindDirection direction = Words.choice(WindDirection.class, given.word("direction"));
    return RoofWind.of(tables, roof, peakPa, given.number("area"), work)
        .then(
            wind ->
                wind.at(direction, given.number("at-along"), given.number("at-up"))
                    .map(
                        found ->
                            pressures(
                                new ZoneCoefficients(tables, roof, given.number("area"))
                                    .pressure(found.zone(), peakPa, work)))
                    .orElseGet(() -> Results.none("the point is not on the plane")));
  }

  private static Outcome<List<Term>> pressures(ZonePressure pressure) {
    String zone = "zone " + pressure.zone().name();
    return Results.of(
        Term.pressure("w_up", zone + ", away", pressure.suctionPa()),
        Term.pressure("w_down", zone + ", toward", pressure.pressurePa()));
  }

  private static EnRoof roof(Given given) {
    double parapetM = given.number("parapet");
    return new EnRoof(
        Words.choice(EnRoof.Shape.class, given.word("shape")),
        given.number("pitch"),
        given.number("along"),
        given.number("across"),
        given.number("depth"),
        given.number("height"),
        parapetM > 0 ? Optional.of(parapetM) : Optional.empty());
  }

  private static Input shape() {
    return Input.word("shape", "shape of the roof", Words.of(EnRoof.Shape.class));
  }

  private static Input pitch() {
    return Input.of("pitch", "pitch", Dimension.ANGLE, -STEEPEST_RAD, STEEPEST_RAD);
  }

  private static Input direction() {
    return Input.word(
        "direction",
        "where the wind comes from, looking up the slope",
        Words.of(WindDirection.class));
  }

  private static Input area() {
    return Input.of("area", "loaded area", Dimension.AREA, 0.0, 1e6);
  }

  private static Input reading() {
    return Input.word(
            "reading",
            "reading of zone I at 5 degrees, about which the sources disagree",
            Words.of(EnTables.Reading.class))
        .unless("severe");
  }

  private static EnTables.Reading reading(Given given) {
    return Words.choice(EnTables.Reading.class, given.word("reading"));
  }

  private static Input length(String name, String meaning) {
    return Input.of(name, meaning, Dimension.LENGTH, 0.0, 1000.0);
  }

  private static Input number(String name, String meaning) {
    return Input.of(name, meaning, Dimension.NUMBER, 0.0, 10.0);
  }

  private static EnTables wind(EnTables.Reading reading) {
    return new EnTables(TablesReader.read("en-wind.yaml").byKey(), reading);
  }
}
