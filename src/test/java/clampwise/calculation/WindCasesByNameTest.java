package clampwise.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The worked cases of handbook parts 8.1 to 8.3 as one asks for them on the command line; sources
 * and tags stand with the same cases in {@code clampwise.calc.wind}.
 */
class WindCasesByNameTest {

  private static final String SITE = "wind-speed=115 mph;exposure=C;height=20 ft";
  private static final String LOW = "top-height=6 in;tilt=0 deg;gap=.5 in;gap-spacing=5 ft;";

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "A-Q1|asce-7-16|wind-speed=105 mph;exposure=B;height=12.1 ft|13.67|.005",
        "A-Q2|asce-7-16|wind-speed=115 mph;exposure=C;height=20 ft|25.8998|.00005",
        "A-Q3|asce-7-22|wind-speed=115 mph;exposure=C;height=20 ft|30.47|.005",
        "A-Q4|asce-7-16|wind-speed=120 mph;exposure=B;height=30 ft|21.9341|.00005",
        "A-Q5|asce-7-16|wind-speed=130 mph;exposure=D;height=18 ft|38.9809|.00005",
        "A-Q6|asce-7-16|wind-speed=150 mph;exposure=C;height=20 ft;topographic-factor=1.2|52.8768|.00005",
        "A-Q7|asce-7-22|wind-speed=115 mph;exposure=C;height=20 ft;ground-factor=.93|28.34|.005",
        "A-Q7|asce-7-16|wind-speed=115 mph;exposure=C;height=20 ft;ground-factor=.93|24.09|.005",
        "A-Q8|asce-7-16|wind-speed=115 mph;exposure=B;height=40 ft|21.87|.005",
        "A-Q9|asce-7-22|wind-speed=120 mph;exposure=C;height=30 ft|36.13|.005"
      })
  void velocityPressure(
      String source, String edition, String inputs, double printed, double tolerance) {
    assertThat(value("velocity-pressure", edition, inputs, "q_h"))
        .as(source)
        .isCloseTo(printed, within(tolerance));
  }

  @ParameterizedTest
  @CsvSource({"5 m, 1202.905", "6.5 m, 1271.217"})
  void aQ10VelocityPressureInSi(String height, double pressurePa) {
    String inputs =
        "edition=asce-7-16;wind-speed=52 m/s;exposure=C;ground-elevation=110 m;"
            + "exposure-method=formula;height="
            + height;
    assertThat(value("velocity-pressure", inputs, "q_h", Measure.METRIC))
        .isCloseTo(pressurePa, within(0.0005));
  }

  @ParameterizedTest
  @CsvSource({"1, -76.17", "1', -43.75", "2, -100.47", "3, -136.94"})
  void aW1RoofPressure(String zone, double exact) {
    String roof = "wind-speed=148 mph;exposure=C;height=15 ft;roof=flat;slope=0 deg;area=10 ft²;";
    assertThat(value("roof-wind-pressure", "asce-7-22", roof + "zone=" + zone, "p_away"))
        .isCloseTo(exact, within(0.011));
  }

  @ParameterizedTest
  @CsvSource({"1, -1.4117", "2, -1.9729", "3, -2.1341"})
  void aW2Coefficients(String zone, double exact) {
    String roof = "height=20 ft;roof=hip;slope=15 deg;area=32 ft²;zone=" + zone;
    assertThat(value("external-coefficient", "asce-7-22", roof, "GC_p_neg"))
        .isCloseTo(exact, within(0.00005));
  }

  @ParameterizedTest
  @CsvSource({"2e, -29.1", "2r, -47.8", "3e, -47.8", "3r, -55.3"})
  void aW3GableOfTheEarlierEdition(String zone, double printed) {
    String roof = "wind-speed=120 mph;exposure=B;height=30 ft;roof=gable;slope=15 deg;area=50 ft²;";
    assertThat(value("roof-wind-pressure", "asce-7-16", roof + "zone=" + zone, "p_away"))
        .isCloseTo(printed, within(0.1));
  }

  @ParameterizedTest
  @CsvSource({"to-200-sq-ft, -46.41", "to-100-sq-ft, -43.378"})
  void aW4HipWithEitherEndOfItsLine(String curve, double exact) {
    String roof = SITE + ";roof=hip;slope=25 deg;area=32 ft²;zone=2;hip-curve=" + curve;
    assertThat(value("roof-wind-pressure", "asce-7-22", roof, "p_away"))
        .isCloseTo(exact, within(0.011));
  }

  @ParameterizedTest
  @CsvSource({"1.5, -24.2", "1.0, -16.1"})
  void aP1PanelEquation(String edge, double printed) {
    String factors = ";coefficient-up=-1.24;equalisation-factor=.67;edge-factor=" + edge;
    double qPsf = 19.43 / 0.85;
    String inputs = "velocity-pressure=" + qPsf + " psf" + factors;
    assertThat(value("panel-equation", "asce-7-22", inputs, "p_away"))
        .isCloseTo(printed, within(0.1));
  }

  @ParameterizedTest
  @CsvSource({
    "asce-7-16, 1, 1.0, -36.38", "asce-7-16, 1, 1.5, -54.57", "asce-7-16, 2r, 1.5, -72.32",
    "asce-7-16, 3r, 1.5, -86.23", "asce-7-22, 1, 1.0, -31.87", "asce-7-22, 1, 1.5, -47.80",
    "asce-7-22, 2, 1.5, -64.96", "asce-7-22, 3, 1.5, -86.23"
  })
  void aP2AndAP3PanelPressure(String edition, String zone, String edge, double exact) {
    String roof = SITE + ";roof=gable;slope=15 deg;area=17.55 ft²;" + LOW + "edge-distance=3 ft;";
    String place = "zone=" + zone + ";edge-factor=" + edge;
    assertThat(value("panel-wind-pressure", edition, roof + place, "p_away"))
        .isCloseTo(exact, within(0.011));
    assertThat(value("panel-wind-pressure", edition, roof + place, "p_toward"))
        .isCloseTo(16, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"12 in, 1", "11.9 in, 0"})
  void aP6EdgeDistance(String distance, double met) {
    assertThat(
            value(
                "panel-conditions",
                "asce-7-22",
                LOW + "edge-distance=" + distance,
                "met_edge_distance"))
        .isEqualTo(met);
  }

  @ParameterizedTest
  @CsvSource({"10 ft², .8000", "17.55 ft², .7023", "50 ft², .5204", "100 ft², .4000"})
  void equalisationFactor(String area, double printed) {
    assertThat(value("equalisation-factor", "asce-7-16", "area=" + area, "gamma_a"))
        .isCloseTo(printed, within(0.00006));
  }

  private static double value(String name, String edition, String inputs, String symbol) {
    boolean exposed = inputs.contains("exposure=");
    String method = exposed ? ";exposure-method=table" : "";
    return value(name, "edition=" + edition + ";" + inputs + method, symbol, Measure.IMPERIAL);
  }

  private static double value(String name, String inputs, String symbol, Measure measure) {
    Calculation calculation = Calculations.find(name).orElseThrow();
    Reading reading = GivenReader.read(calculation, List.of(inputs.split(";")));
    assertThat(reading.problems()).isEmpty();
    assertThat(reading.measure()).isEqualTo(measure);
    Outcome<List<Term>> found =
        calculation.body().run(reading.given().orElseThrow(), new Work(measure));
    return found.result().orElseThrow(() -> new AssertionError(found.toString())).stream()
        .filter(term -> term.symbol().equals(symbol))
        .mapToDouble(measure::value)
        .findFirst()
        .orElseThrow();
  }
}
