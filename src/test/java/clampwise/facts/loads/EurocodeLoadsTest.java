package clampwise.facts.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.combination.Combination;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.Pressures;
import clampwise.facts.layout.ZoneArea;
import clampwise.facts.layout.ZoneLookup;
import clampwise.facts.roof.ZoneWidthClaim;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whole jobs under EN 1991. Cases A-E1 to A-E4: printed in a guide to single-storey steel buildings
 * (A-E1) and in a calculation (A-E2) [read]; tests of a public library (A-E3, A-E4).
 */
class EurocodeLoadsTest {

  private static final double TEN_DEGREES = Math.toRadians(10);

  /** Case A-E1 [read]: vb 26, category III, z 8: 659 N/m² within 0.5 %; e 16. */
  @Test
  void aE1PeakPressureAndZonesOfTheGuidesBuilding() {
    EurocodeJobs job =
        EurocodeJobs.gable(
            60,
            16,
            8,
            8.5,
            "25 m/s",
            "26 m/s",
            "terrain: II",
            "terrain: III",
            "job: case",
            "job: case\nclaims: {zone-width: 1.5 m}");
    assertThat(job.wind("q_b")).isCloseTo(422.5, within(0.05));
    assertThat(job.wind("k_r")).isCloseTo(0.215, within(0.0005));
    assertThat(job.wind("c_r")).isCloseTo(0.706, within(0.002));
    assertThat(job.wind("q_p")).isCloseTo(659, within(659 * 0.005));
    assertThat(job.facts(ZoneWidthClaim.class))
        .allSatisfy(claim -> assertThat(claim.computedM()).isCloseTo(1.6, within(1e-6)))
        .hasSize(1);
  }

  /** Case A-E2 [read]: vb 22, category III, z 13.48: .58 kN/m², exact .577. */
  @Test
  void aE2PeakPressureOfTheCalculation() {
    EurocodeJobs job =
        EurocodeJobs.flat(
            "25 m/s",
            "22 m/s",
            "terrain: II",
            "terrain: III",
            "eave-height: 5 m",
            "eave-height: 13.48 m");
    assertThat(job.wind("v_m")).isCloseTo(18.0, within(0.05));
    assertThat(job.wind("I_v")).isCloseTo(0.263, within(0.0005));
    assertThat(job.wind("q_p")).isCloseTo(577, within(1.0));
  }

  /** Case A-E3 [library]: 8 by 12 m, h 7, duopitch 10 degrees, vb 30, category I; within .015. */
  @ParameterizedTest
  @CsvSource({
    "corner, '[0 m, 0 m]', -2.09, 0.144",
    "middle of the eave, '[4 m, 0 m]', -1.44, 0.144",
    "middle of the ridge, '[4 m, 1.5 m]', -1.15, 0.15"
  })
  void aE3ModulesOfTenSquareMetresTakeTheWorstOfFourDirections(
      String where, String at, double away, double toward) {
    Pressures pressures = duopitch("at: [8 m, 2 m]", "at: " + at).pressures();
    assertThat(pressures.awayPa()).as(where).isCloseTo(1000 * away, within(15.0));
    assertThat(pressures.towardPa()).as(where).isCloseTo(1000 * toward, within(15.0));
  }

  /**
   * Zones of case A-E3: strip 1.2 m with F 3.0 m long; wind along the eave .8 m, F 2.0, H to 4.0.
   */
  @ParameterizedTest
  @CsvSource({
    "2.9, 1.1, F",
    "3.1, 1.1, G",
    "6, 1.19, G",
    "6, 1.21, H",
    "6, 2.79, H",
    "6, 2.81, J",
    "0.7, 1.9, F",
    "0.7, 2.1, G",
    "0.9, 2.1, H",
    "9.1, 0.1, F"
  })
  void aE3TheMapShowsTheZoneWithMostSuctionOverAllDirections(
      double alongM, double planM, String zone) {
    ZoneLookup zones = new ZoneLookup(duopitch().plane().zones());
    assertThat(zones.at(alongM, planM / Math.cos(TEN_DEGREES)).map(ZoneArea::name)).contains(zone);
  }

  @Test
  void theZonesCoverThePlaneOnce() {
    double areaM2 =
        duopitch().plane().zones().stream().mapToDouble(zone -> zone.area().getArea()).sum();
    assertThat(areaM2).isCloseTo(12 * 4 / Math.cos(TEN_DEGREES), within(1e-3));
  }

  /** Case A-E4 [library]: 10 by 20 m, h 5, flat with sharp edges, vb 25, category II. */
  @ParameterizedTest
  @CsvSource({"'[0 m, 0 m]', -1.36, F", "'[8 m, 0 m]', -0.90, G", "'[8 m, 2 m]', -0.53, H"})
  void aE4FlatRoof(String at, double away, String zone) {
    EurocodeJobs job = EurocodeJobs.flat("[8 m, 2 m]", at);
    assertThat(job.wind("q_p")).isCloseTo(753.6, within(0.1));
    assertThat(job.pressures().awayPa()).isCloseTo(1000 * away, within(5.0));
    assertThat(EurocodeWind.of(job.site()).result().orElseThrow().place(job.module()).zone())
        .isEqualTo(zone);
  }

  /** Case A-E4 [library]: zone I takes .15 kN/m² of pressure. */
  @Test
  void aE4PressureOfZoneI() {
    assertThat(EurocodeJobs.flat("[8 m, 2 m]", "[8 m, 6 m]").pressures().towardPa())
        .isCloseTo(150, within(5.0));
  }

  /** EN 1990, expression 6.10 with recommended factors; modules: all partial factors 1. */
  @Test
  void attachmentsMeetDesignValuesAndModulesCharacteristicOnes() {
    Standard standard = Standard.of(EurocodeJobs.flat().site()).result().orElseThrow();
    assertThat(standard.combinations())
        .extracting(Combination::name)
        .contains("1.35 G + 1.5 S + 0.9 W", "1.35 G + 0.75 S + 1.5 W", "G + 1.5 W");
    assertThat(standard.service())
        .extracting(Combination::name)
        .contains("G + S + 0.6 W", "G + 0.5 S + W", "G + W");
  }

  /**
   * By hand: W = -.7 x 753.6 = -527.5, G = 20 x 9.80665 / 10 = 19.6, G + 1.5 W = -771.6 Pa; a
   * quarter of 10 m² for each clamp: 1929 N of 2000 N. Module: 507.9 of 900 / 1.5 = 600 Pa.
   */
  @Test
  void oneClampAndOneModuleByHand() {
    EurocodeJobs job = EurocodeJobs.flat();
    assertThat(job.facts(AttachmentUse.class))
        .allSatisfy(use -> assertThat(use.normalN()).isCloseTo(1929, within(1.0)))
        .allSatisfy(use -> assertThat(use.utilisation()).isCloseTo(0.9645, within(0.0005)))
        .allSatisfy(use -> assertThat(use.combination()).isEqualTo("G + 1.5 W"))
        .hasSize(4);
    assertThat(job.facts(ModuleUse.class))
        .allSatisfy(use -> assertThat(use.ratedPa()).isEqualTo(600))
        .allSatisfy(use -> assertThat(use.demandPa()).isCloseTo(507.9, within(0.2)))
        .hasSize(1);
  }

  @Test
  void anAllowableLoadMixesLimitStatesAndIsNotHeldAgainstDesignValues() {
    EurocodeJobs job = EurocodeJobs.flat("loads-are: resistance", "loads-are: allowable");
    assertThat(job.facts(LimitStates.class))
        .allSatisfy(states -> assertThat(states.mixed()).isTrue())
        .allSatisfy(s -> assertThat(s.loads()).isEqualTo("design values of EN 1990"))
        .allSatisfy(s -> assertThat(s.remedy()).contains("loads-are: resistance"))
        .allSatisfy(s -> assertThat(s.remedy()).doesNotContain("method"))
        .hasSize(1);
    assertThat(job.missing(AttachmentUse.class))
        .containsExactly("an allowable load may not be held against design values of EN 1990");
  }

  @Test
  void anUltimateLoadTakesItsResistanceFactor() {
    EurocodeJobs job =
        EurocodeJobs.flat(
            "loads-are: resistance", "loads-are: ultimate, resistance-factor: \"0.8\"");
    assertThat(job.facts(AttachmentUse.class))
        .allSatisfy(use -> assertThat(use.normalStrengthN()).isCloseTo(1600, within(1e-9)))
        .hasSize(4);
  }

  @Test
  void aMissingInputLeavesOnlyItsOwnChecksUnchecked() {
    EurocodeJobs windless = EurocodeJobs.flat("  terrain: II\n", "");
    assertThat(windless.missing(AttachmentUse.class))
        .containsExactly("the terrain category of the site is not given (site: terrain)");
    assertThat(windless.facts(LimitStates.class)).hasSize(1);
    EurocodeJobs snowless = EurocodeJobs.flat("  ground-snow: 0.65 kPa\n", "");
    assertThat(snowless.missing(AttachmentUse.class))
        .containsExactly("the ground snow load of the site is not given (site: ground-snow)");
    assertThat(snowless.facts(AttachmentUse.class))
        .extracting(AttachmentUse::pull)
        .containsOnly("uplift");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "roof: flat | roof: hip | hip roofs of EN 1991-1-4 are not part of this version",
        "length: 20 m | length: 30 m | the plane covers a part of the building; the zones of EN 1991-1-4 are drawn for planes that span it",
        "  eave-height: 5 m | '' | neither the eave height nor the mean height of the roof is given (building: eave-height)",
        "slope: 0 deg | slope: 8 deg | a flat roof has a pitch of at most 5 degrees"
      })
  void whatTheStandardDoesNotSayIsSaid(String from, String to, String why) {
    assertThat(EurocodeJobs.flat(from, to).plane().zonesUnknown()).contains(why);
  }

  @Test
  void theLinesSayWhichRecommendedValuesAreAssumed() {
    Work work = new Work(Measure.METRIC);
    EurocodeJobs job =
        EurocodeJobs.flat("building:", "loads: {annex: {direction-factor: \"0.9\"}}\nbuilding:");
    EurocodeWind.of(job.site()).then(wind -> wind.show(job.module(), work));
    EurocodeAnnex.partial(job.site(), work);
    assertThat(note(work, "c_dir")).isEqualTo("given");
    assertThat(note(work, "c_season")).startsWith("assumption");
    assertThat(note(work, "rho")).startsWith("assumption");
    assertThat(note(work, "gamma_Q")).startsWith("assumption");
    assertThat(note(work, "w_up")).contains("an assumption");
    assertThat(job.wind("v_b")).isCloseTo(0.9 * 25, within(1e-9));
  }

  /** Recommended: 1 (4.2 (2)P), 1.25 kg/m³ (4.5), 1.5 and 1.0 (EN 1990, A1.2(B)); from memory. */
  @Test
  void anAnnexValueMilderThanTheRecommendedOneIsTold() {
    String annex =
        "loads: {annex: {direction-factor: 0.85, season-factor: 1, air-density: 1.2, variable: 1.35,"
            + " dead-favourable: 1, terrain-factor: 0.18, psi-wind: 0.7}}\nbuilding:";
    assertThat(EurocodeJobs.flat("building:", annex).facts(StatedChoice.class))
        .filteredOn(StatedChoice::mild)
        .extracting(choice -> choice.key() + ": " + choice.chosen() + "; " + choice.instead())
        .containsExactly(
            "annex.direction-factor: 0.85; the 1 that EN 1991-1-4 recommends",
            "annex.terrain-factor: 0.18; the 0.19 that EN 1991-1-4 recommends",
            "annex.air-density: 1.2; the 1.25 that EN 1991-1-4 recommends",
            "annex.variable: 1.35; the 1.5 that EN 1990 recommends");
  }

  @Test
  void aRoofTooSteepForTheTablesIsNotCalledAPartOfABuilding() {
    EurocodeJobs steep =
        EurocodeJobs.flat("roof: flat", "roof: gable", "slope: 0 deg", "slope: 89.9 deg");
    assertThat(steep.plane().zonesUnknown())
        .contains("the tables of this roof shape do not reach this pitch");
  }

  /** Zone H of a flat roof, 10 m²: (-.7 - .2) x 753.6; internal pressure from memory. */
  @Test
  void theBareRoofHasPressureInside() {
    FieldWind wind = EurocodeWind.of(EurocodeJobs.flat().site()).result().orElseThrow();
    Work work = new Work(Measure.METRIC);
    assertThat(wind.bare("H", 5, 2, work).result().orElseThrow().awayPa())
        .isCloseTo(-0.9 * 753.6, within(0.1));
    FieldWind open =
        EurocodeWind.of(EurocodeJobs.flat("roof: flat", "roof: flat\n  enclosure: open").site())
            .result()
            .orElseThrow();
    assertThat(open.bare("H", 5, 2, work)).isInstanceOf(NotApplicable.class);
    assertThat(wind.bare("", 5, 2, work)).isInstanceOf(NotApplicable.class);
  }

  @Test
  void aParapetRaisesTheReferenceHeightAndLowersTheSuction() {
    EurocodeJobs job =
        EurocodeJobs.flat(
            "roof: flat", "roof: flat\n  parapet: 500 mm", "[8 m, 2 m]", "[0 m, 0 m]");
    assertThat(job.wind("z_e")).isCloseTo(5.5, within(1e-9));
    assertThat(job.pressures().awayPa() / job.wind("q_p")).isCloseTo(-1.2, within(1e-9));
  }

  private static String note(Work work, String symbol) {
    return work.lines().stream()
        .filter(line -> line.result().symbol().equals(symbol))
        .map(Line::note)
        .findFirst()
        .orElseThrow();
  }

  private static EurocodeJobs duopitch(String... replacements) {
    String[] all = new String[replacements.length + 4];
    all[0] = "25 m/s";
    all[1] = "30 m/s";
    all[2] = "terrain: II";
    all[3] = "terrain: I";
    System.arraycopy(replacements, 0, all, 4, replacements.length);
    return EurocodeJobs.gable(12, 4, 7, 10, all);
  }
}
