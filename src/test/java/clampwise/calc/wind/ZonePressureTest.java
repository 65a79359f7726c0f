package clampwise.calc.wind;

import static clampwise.calc.ZoneWidth.Shape.FLAT;
import static clampwise.calc.ZoneWidth.Shape.GABLE;
import static clampwise.calc.ZoneWidth.Shape.HIP;
import static clampwise.calc.ZoneWidth.Shape.MONOSLOPE;
import static clampwise.calc.wind.Cases.CODE_16;
import static clampwise.calc.wind.Cases.CODE_22;
import static clampwise.calc.wind.Cases.building;
import static clampwise.calc.wind.Cases.of;
import static clampwise.calc.wind.Cases.patch;
import static clampwise.calc.wind.Cases.psf;
import static clampwise.calc.wind.Cases.site;
import static clampwise.calc.wind.Cases.velocity;
import static clampwise.calc.wind.Cases.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.AsceEdition;
import clampwise.calc.Outcome;
import clampwise.calc.ZoneWidth;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.WindChoices.HipCurve;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked cases A-W1 to A-W5 of handbook part 8.2. */
class ZonePressureTest {

  private static final double PRINTED = 0.1;
  private static final double EXACT = 0.011;

  /** A-W1 [2nd: guide to 7-22, example 6.1]; tolerance of the printed values 0.3 psf. */
  @ParameterizedTest
  @CsvSource({
    "10, 1, -76.1, -76.17", "10, 1', -43.7, -43.75", "10, 2, -100.4, -100.47",
    "10, 3, -136.9, -136.94", "300, 1, -51.4, -51.51", "300, 1', -34.0, -34.09",
    "300, 2, -68.9, -68.77", "300, 3, -73.3, -73.53"
  })
  void aW1FlatRoof(double area, String zone, double printed, double exact) {
    Velocity velocity = velocity(CODE_22, site(148, Exposure.C), 15);
    assertThat(psf(velocity.pressurePa())).isCloseTo(47.663, within(0.0005));
    assertThat(psf(velocity.loadPa())).isCloseTo(40.51, within(0.005));
    double away =
        psf(
            of(ZonePressure.of(
                    CODE_22, building(FLAT, 0, 30, 15), velocity, patch(zone, area), work()))
                .awayPa());
    assertThat(away).isCloseTo(printed, within(0.3)).isCloseTo(exact, within(EXACT));
  }

  /** A-W1, coefficients at 300 sq ft [computed]. */
  @ParameterizedTest
  @CsvSource({"1, -1.0914", "1', -.6614", "2, -1.5175", "3, -1.6350"})
  void aW1Coefficients(String zone, double printed) {
    Coefficients found = coefficients(CODE_22, building(FLAT, 0, 30, 15), zone, 300);
    assertThat(found.negative()).isCloseTo(printed, within(0.00006));
  }

  /** A-W2 [2nd: guide to 7-22, example 6.3]. */
  @ParameterizedTest
  @CsvSource({"1, -1.4117", "2, -1.9729", "3, -2.1341"})
  void aW2HipRoof(String zone, double exact) {
    Coefficients found = coefficients(CODE_22, building(HIP, 15, 40, 20), zone, 32);
    assertThat(found.negative()).isCloseTo(exact, within(0.00005));
  }

  /** A-W3, 7-16 [2nd, computed again]. b1: 115 mph, exposure C, 20 ft. */
  @ParameterizedTest
  @CsvSource({"1, -1.492, -43.3", "1', -.900, -28.0", "2, -2.032, -57.3", "3, -2.665, -73.7"})
  void aW3B1FlatRoof(String zone, double coefficient, double printed) {
    Roofed roof = new Roofed(CODE_16, site(115, Exposure.C), building(FLAT, 0, 50, 20));
    check(roof, zone, 32, coefficient, printed);
    assertThat(coefficients(CODE_16, roof.building, zone, 32).positive())
        .isCloseTo(.249, within(.0006));
    assertThat(psf(pressures(roof, zone, 32).towardPa())).isCloseTo(16, within(PRINTED));
    assertThat(psf(computedToward(roof, zone, 32))).isCloseTo(11.1, within(PRINTED));
  }

  /** A-W3 b4: 120 mph, exposure B, 30 ft, figure 2B. */
  @ParameterizedTest
  @CsvSource({
    "1, -1.146, -29.1",
    "2e, -1.146, -29.1",
    "2r, -2.000, -47.8",
    "2n, -2.000, -47.8",
    "3e, -2.000, -47.8",
    "3r, -2.342, -55.3"
  })
  void aW3B4Gable(String zone, double coefficient, double printed) {
    Roofed roof = new Roofed(CODE_16, site(120, Exposure.B), building(GABLE, 15, 40, 30));
    check(roof, zone, 50, coefficient, printed);
    assertThat(coefficients(CODE_16, roof.building, zone, 50).positive())
        .isCloseTo(.371, within(.0006));
    assertThat(psf(computedToward(roof, zone, 50))).isCloseTo(12.1, within(PRINTED));
  }

  /** A-W3 b6: 130 mph, exposure D, 18 ft, figure 5A. */
  @ParameterizedTest
  @CsvSource({
    "1, -1.100, -49.9",
    "2, -1.212, -54.3",
    "2', -1.512, -66.0",
    "3, -1.275, -56.7",
    "3', -1.725, -74.3"
  })
  void aW3B6Monoslope(String zone, double coefficient, double printed) {
    Roofed roof = new Roofed(CODE_16, site(130, Exposure.D), building(MONOSLOPE, 5, 80, 18));
    check(roof, zone, 75, coefficient, printed);
    assertThat(psf(computedToward(roof, zone, 75))).isCloseTo(15.3, within(PRINTED));
    assertThat(psf(pressures(roof, zone, 75).towardPa())).isCloseTo(16, within(1e-9));
  }

  /** A-W3 b10: 150 mph, exposure C, 20 ft, on a hill of factor 1.2. */
  @ParameterizedTest
  @CsvSource({"1, -1.0, -62.4", "1', -.511, -36.5", "2, -1.4, -83.5", "3, -1.4, -83.5"})
  void aW3B10OnAHill(String zone, double coefficient, double printed) {
    WindSite hill = site(150, Exposure.C, 1.2, Optional.empty());
    Roofed roof = new Roofed(CODE_16, hill, building(FLAT, 0, 50, 20));
    check(roof, zone, 600, coefficient, printed);
    assertThat(psf(pressures(roof, zone, 600).towardPa())).isCloseTo(20.1, within(PRINTED));
  }

  /** A-W3 and A-W5: dimension a. */
  @ParameterizedTest
  @CsvSource({"50, 20, 5", "40, 30, 4", "80, 18, 7.2", "80, 45, 8", "40, 22, 4"})
  void aW3DimensionA(double leastFt, double heightFt, double aFt) {
    double aM = ZoneWidth.aM(CODE_16.tables(), building(GABLE, 15, leastFt, heightFt).roof());
    assertThat(aM / Cases.FOOT_M).isCloseTo(aFt, within(1e-9));
  }

  /** A-W4, 7-22 [2nd, computed again]. T3, T6, T9, T13. */
  @ParameterizedTest
  @CsvSource({
    "FLAT, 0, 115, C, 20, 32, 1, 11.124, -43.301", "FLAT, 0, 115, C, 20, 32, 1', 11.124, -27.972",
    "FLAT, 0, 115, C, 20, 32, 2, 11.124, -57.301", "FLAT, 0, 115, C, 20, 32, 3, 11.124, -73.680",
    "GABLE, 15, 120, B, 30, 50, 1, 13.573, -32.248",
        "GABLE, 15, 120, B, 30, 50, 2, 13.573, -43.137",
    "GABLE, 15, 120, B, 30, 50, 3, 13.573, -55.315",
        "GABLE, 35, 115, C, 20, 10, 1, 27.972, -51.282",
    "GABLE, 35, 115, C, 20, 10, 2, 27.972, -56.462",
        "GABLE, 35, 115, C, 20, 10, 3, 27.972, -69.412",
    "GABLE, 35, 115, C, 20, 600, 1, 17.612, -25.382",
        "GABLE, 35, 115, C, 20, 600, 2, 17.612, -30.562",
    "GABLE, 35, 115, C, 20, 600, 3, 17.612, -30.562",
        "MONOSLOPE, 5, 115, C, 20, 32, 1, 11.124, -33.152",
    "MONOSLOPE, 5, 115, C, 20, 32, 2, 11.124, -37.023",
        "MONOSLOPE, 5, 115, C, 20, 32, 2', 11.124, -44.793",
    "MONOSLOPE, 5, 115, C, 20, 32, 3, 11.124, -43.432",
        "MONOSLOPE, 5, 115, C, 20, 32, 3', 11.124, -58.918"
  })
  void aW4LaterEdition(
      ZoneWidth.Shape shape,
      double degrees,
      double mph,
      Exposure exposure,
      double heightFt,
      double area,
      String zone,
      double toward,
      double away) {
    Roofed roof = new Roofed(CODE_22, site(mph, exposure), building(shape, degrees, 60, heightFt));
    assertThat(psf(pressures(roof, zone, area).awayPa())).isCloseTo(away, within(EXACT));
    assertThat(psf(computedToward(roof, zone, area))).isCloseTo(toward, within(EXACT));
    assertThat(psf(pressures(roof, zone, area).towardPa()))
        .isCloseTo(Math.max(16, toward), within(EXACT));
  }

  /** A-W4 T11: the line of zones 2 and 3 ends at 100 or at 200 sq ft. */
  @Test
  void aW4T11TakesTheSevereEndUnlessChosen() {
    Roofed severe = new Roofed(CODE_22, site(115, Exposure.C), building(HIP, 25, 60, 20));
    Roofed chosen = new Roofed(to100(), severe.site, severe.building);
    assertThat(psf(pressures(severe, "1", 32).awayPa())).isCloseTo(-33.072, within(EXACT));
    for (String zone : new String[] {"2", "3"}) {
      assertThat(psf(pressures(severe, zone, 32).awayPa())).isCloseTo(-46.41, within(EXACT));
      assertThat(psf(pressures(chosen, zone, 32).awayPa())).isCloseTo(-43.378, within(EXACT));
    }
  }

  @Test
  void theOpenEndIsToldInTheLine() {
    Work work = work();
    of(ExternalCoefficient.of(CODE_22, building(HIP, 25, 60, 20), patch("2", 32), work));
    assertThat(work.lines()).extracting(Line::note).anyMatch(note -> note.contains("severe 200"));
  }

  /** A-W5 [2nd]: 45 ft high with a parapet of 3 ft; both editions. */
  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, 1, -48.8", "ASCE_7_16, 1', -33.1", "ASCE_7_16, 2, -64.7", "ASCE_7_16, 3, -80.9",
    "ASCE_7_22, 1, -48.8", "ASCE_7_22, 1', -33.1", "ASCE_7_22, 2, -64.7", "ASCE_7_22, 3, -80.9"
  })
  void aW5WithParapet(AsceEdition edition, String zone, double away) {
    WindBuilding plain = building(FLAT, 0, 80, 45);
    WindBuilding building = new WindBuilding(plain.roof(), Enclosure.ENCLOSED, 3 * Cases.FOOT_M);
    Roofed roof = new Roofed(Cases.code(edition), site(115, Exposure.C), building);
    double printedQ = edition == AsceEdition.ASCE_7_16 ? 30.65 : 36.06;
    assertThat(psf(velocity(roof.code, roof.site, 45).pressurePa()))
        .isCloseTo(printedQ, within(0.005));
    assertThat(psf(pressures(roof, zone, 50).awayPa())).isCloseTo(away, within(PRINTED));
    if (zone.equals("1")) {
      assertThat(psf(computedToward(roof, zone, 50))).isCloseTo(12.6, within(PRINTED));
    }
  }

  /** A-W5 [2nd]: gable of 25 degrees, 7-22, figure 2C. */
  @ParameterizedTest
  @CsvSource({"1, -47.9", "2, -69.4", "3, -81.4"})
  void aW5Gable(String zone, double away) {
    Roofed roof = new Roofed(CODE_22, site(130, Exposure.C), building(GABLE, 25, 40, 22));
    Velocity velocity = velocity(CODE_22, roof.site, 22);
    assertThat(psf(velocity.pressurePa())).isCloseTo(39.63, within(0.005));
    assertThat(psf(velocity.loadPa())).isCloseTo(33.69, within(0.005));
    assertThat(psf(pressures(roof, zone, 30).awayPa())).isCloseTo(away, within(PRINTED));
    assertThat(psf(pressures(roof, zone, 30).towardPa())).isCloseTo(22.6, within(PRINTED));
  }

  /** Note 5 of figure 30.3-2A [2nd] with the wall's 1.0 to 0.7 over 10 to 500 sq ft [memory]. */
  @Test
  void aParapetOf3FeetLendsZones2And3TheWallsPositiveCoefficient() {
    WindBuilding plain = building(FLAT, 0, 80, 45);
    WindBuilding high = new WindBuilding(plain.roof(), Enclosure.ENCLOSED, 3 * Cases.FOOT_M);
    WindBuilding low = new WindBuilding(plain.roof(), Enclosure.ENCLOSED, 2.9 * Cases.FOOT_M);
    assertThat(coefficients(CODE_16, high, "2", 10).positive()).isEqualTo(1.0);
    assertThat(coefficients(CODE_16, high, "3", 500).positive()).isEqualTo(0.7);
    assertThat(coefficients(CODE_16, high, "1", 10).positive()).isEqualTo(0.3);
    assertThat(coefficients(CODE_16, low, "2", 10).positive()).isEqualTo(0.3);
    assertThat(coefficients(wallsReduced(), high, "2", 10).positive())
        .isCloseTo(0.9, within(1e-12));
  }

  /** Figures 30.3-2E and 2F of 7-16 [library]: half way between h/B 0.5 and 0.8 at 10 sq ft. */
  @ParameterizedTest
  @CsvSource({"15, -1.8", "19.5, -2.2", "24, -2.6", "30, -2.6"})
  void hipsOfTheEarlierEditionInterpolateInHeightOverWidth(double heightFt, double zone3) {
    Coefficients found = coefficients(CODE_16, building(HIP, 15, 30, heightFt), "3", 10);
    assertThat(found.negative()).isCloseTo(zone3, within(1e-9));
  }

  /** 7-22, hip: 2F + (2G - 2F)(slope - 27)/18 [2nd]. */
  @ParameterizedTest
  @CsvSource({"27, -2.0", "36, -2.2", "45, -2.4"})
  void steepHipsOfTheLaterEditionInterpolateInSlope(double degrees, double zone3) {
    Coefficients found = coefficients(CODE_22, building(HIP, degrees, 60, 20), "3", 10);
    assertThat(found.negative()).isCloseTo(zone3, within(1e-9));
  }

  /** Table 26.13-1 [2nd]: 0.18 and 0.55. */
  @Test
  void aPartiallyEnclosedBuildingTakesMore() {
    WindBuilding plain = building(FLAT, 0, 50, 20);
    WindBuilding open = new WindBuilding(plain.roof(), Enclosure.PARTIALLY_ENCLOSED, 0);
    WindSite site = site(115, Exposure.C);
    double enclosed = pressures(new Roofed(CODE_16, site, plain), "1", 10).awayPa();
    double partially = pressures(new Roofed(CODE_16, site, open), "1", 10).awayPa();
    assertThat(psf(enclosed - partially)).isCloseTo(25.8998 * 0.37, within(0.001));
  }

  @Test
  void overhangsAreLeftOutWithTheReason() {
    Outcome<Coefficients> found =
        ExternalCoefficient.of(CODE_16, building(FLAT, 0, 50, 20), patch("overhang", 9), work());
    assertThat(found)
        .hasToString(
            "NotApplicable[reason=overhang coefficients are left out: panels parallel to a roof stay"
                + " within its edges]");
  }

  @Test
  void openBuildingsAreNotCovered() {
    WindBuilding open = new WindBuilding(building(FLAT, 0, 50, 20).roof(), Enclosure.OPEN, 0);
    Velocity velocity = velocity(CODE_16, site(115, Exposure.C), 20);
    assertThat(ZonePressure.of(CODE_16, open, velocity, patch("1", 10), work()))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, GABLE, 15, 20, 2, has no zone 2; it has 1; 2e; 2r; 2n; 3e; 3r",
    "ASCE_7_22, GABLE, 15, 20, 2e, has no zone 2e; it has 1; 2; 3",
    "ASCE_7_16, HIP, 35, 20, 1, are not at hand",
    "ASCE_7_16, GABLE, 46, 20, 1, no figure covers a gable roof this steep",
    "ASCE_7_16, MONOSLOPE, 31, 20, 1, no figure covers",
    "ASCE_7_22, GABLE, 15, 61, 1, above a height of 60 ft"
  })
  void outsideTheFiguresTheReasonIsTold(
      AsceEdition edition,
      ZoneWidth.Shape shape,
      double degrees,
      double heightFt,
      String zone,
      String reason) {
    Outcome<Coefficients> found =
        ExternalCoefficient.of(
            Cases.code(edition), building(shape, degrees, 60, heightFt), patch(zone, 20), work());
    assertThat(found)
        .isInstanceOfSatisfying(
            Outcome.NotApplicable.class,
            none -> assertThat(none.reason().replace(", ", "; ")).contains(reason));
  }

  /** Figure 30.5-1 (7-16) and 30.4-1 (7-22) [2nd]. */
  @ParameterizedTest
  @CsvSource({"1, -1.4, -.9", "2, -2.3, -1.6", "3, -3.2, -2.3"})
  void tallFlatRoofsHaveTheirOwnFigure(String zone, double at10, double at500) {
    for (AsceEdition edition : AsceEdition.values()) {
      WindBuilding tall = building(FLAT, 1, 80, 100);
      assertThat(coefficients(Cases.code(edition), tall, zone, 10).negative()).isEqualTo(at10);
      assertThat(coefficients(Cases.code(edition), tall, zone, 500).negative()).isEqualTo(at500);
    }
  }

  @Test
  void anEffectiveAreaIsAtLeastAThirdOfItsSpanWide() {
    assertThat(of(EffectiveArea.of(CODE_16, 6, 1, work()))).isCloseTo(12, within(1e-9));
    assertThat(of(EffectiveArea.of(CODE_16, 6, 3, work()))).isCloseTo(18, within(1e-9));
    assertThat(EffectiveArea.of(CODE_16, 0, 3, work())).isInstanceOf(Outcome.NotApplicable.class);
  }

  private record Roofed(WindCode code, WindSite site, WindBuilding building) {}

  private static void check(
      Roofed roof, String zone, double area, double coefficient, double printed) {
    assertThat(coefficients(roof.code, roof.building, zone, area).negative())
        .isCloseTo(coefficient, within(0.0006));
    assertThat(psf(pressures(roof, zone, area).awayPa())).isCloseTo(printed, within(PRINTED));
  }

  private static Pressures pressures(Roofed roof, String zone, double area) {
    double heightFt = roof.building.roof().heightM() / Cases.FOOT_M;
    Velocity velocity = velocity(roof.code, roof.site, heightFt);
    return of(ZonePressure.of(roof.code, roof.building, velocity, patch(zone, area), work()));
  }

  private static double computedToward(Roofed roof, String zone, double area) {
    double heightFt = roof.building.roof().heightM() / Cases.FOOT_M;
    Work work = work();
    Velocity velocity = velocity(roof.code, roof.site, heightFt);
    of(ZonePressure.of(roof.code, roof.building, velocity, patch(zone, area), work));
    return work.lines().stream()
        .filter(line -> line.result().symbol().equals("p_pos"))
        .findFirst()
        .orElseThrow()
        .result()
        .si();
  }

  private static Coefficients coefficients(
      WindCode code, WindBuilding building, String zone, double area) {
    return of(ExternalCoefficient.of(code, building, patch(zone, area), work()));
  }

  private static WindCode to100() {
    return CODE_22.with(Cases.choices().with(HipCurve.TO_100_SQ_FT));
  }

  private static WindCode wallsReduced() {
    return CODE_16.with(Cases.choices().withWallReduced(true));
  }
}
