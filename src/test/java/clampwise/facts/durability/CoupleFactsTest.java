package clampwise.facts.durability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import clampwise.units.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Couples of metals in four steps, and the order of water. */
class CoupleFactsTest {

  private static final String NOTHING_ELSE = "planes: {south: {obstructions: ~}}\n";

  private static BaseJob job(String over) {
    return BaseJob.with("weathered-roof", over + NOTHING_ELSE);
  }

  private static MetalCouple body(BaseJob job) {
    return named(job, "clamp SC-1 (");
  }

  private static MetalCouple named(BaseJob job, String start) {
    return job.facts(MetalCouple.class).stream()
        .filter(fact -> fact.part().startsWith(start))
        .findFirst()
        .orElseThrow();
  }

  /** Differences and verdicts of the trade in handbook table 2.4 [computed; read and practice]. */
  @ParameterizedTest
  @CsvSource({
    "steel, AZ50, aluminium, 0.30, false, true",
    "steel, G90, aluminium, 0.30, false, true",
    "steel, G90, stainless-steel, 0.70, false, true",
    "aluminium, ~, stainless-steel, 0.40, false, true",
    "copper, ~, aluminium, 0.55, true, false",
    "steel, AZ50, copper, 0.85, true, false",
    "zinc, ~, copper, 0.90, true, false",
    "stainless-steel, ~, steel, 0.35, false, false",
    "stainless-steel, ~, aluminium, 0.40, false, false"
  })
  void aPartOnTheSheetIsJudgedAsInHandbookTable24(
      String sheet, String coating, String part, double volts, boolean never, boolean accepted) {
    String over =
        """
        panels: {steel seams: {metal: %s, coating: %s}}
        parts: {seam-clamps: {SC-1: {metal: %s}}}
        """
            .formatted(sheet, coating, part);

    MetalCouple couple = body(job(over));

    assertThat(couple.differenceV()).isCloseTo(volts, within(1e-9));
    assertThat(couple.never()).isEqualTo(never);
    assertThat(couple.accepted()).isEqualTo(accepted);
  }

  /** Handbook table 2.4: 0.15 V harsh, 0.25 V normal [read]; which class is which is practice. */
  @ParameterizedTest
  @CsvSource({"C1, 0.25", "C2, 0.25", "C3, 0.15", "C4, 0.15", "C5, 0.15", "CX, 0.15"})
  void theAirDecidesHowFarApartMetalsMayBe(String air, double volts) {
    assertThat(body(job("site: {corrosivity: %s}\n".formatted(air))).mostV()).isEqualTo(volts);
  }

  @Test
  void airThatIsNotKnownCountsAsHarsh() {
    assertThat(body(job("site: {corrosivity: ~, setting: ~}\n")).mostV()).isEqualTo(0.15);
  }

  @Test
  void theSettingStandsInForTheClass() {
    List<StainlessInAir> screws =
        job("site: {corrosivity: ~, setting: shore}\n").facts(StainlessInAir.class);

    assertThat(screws).hasSize(3).allMatch(fact -> fact.air().equals("C5"));
    assertThat(screws).allMatch(fact -> fact.airFrom().contains("shore"));
  }

  @Test
  void coatingsThatAreNotKnownLeaveTheSheetUnchecked() {
    BaseJob job = job("panels: {steel seams: {coating: ZM310}}\n");

    assertThat(job.missing(MetalCouple.class))
        .containsExactly("coating ZM310 of steel seams is not known");
    assertThat(job.missing(GraphiteMarks.class))
        .containsExactly("coating ZM310 of steel seams is not known");
  }

  @Test
  void partsThatSayNothingAreOneReason() {
    String over =
        """
        parts:
          mid-clamps: {MC-1: {metal: ~, screws: ~}}
          end-clamps: {EC-1: {metal: ~, screws: ~}}
        """;

    assertThat(job(over).missing(MetalCouple.class))
        .containsExactly("the metal of EC-1 and MC-1 is not given (metal)");
    assertThat(job(over).missing(StainlessInAir.class))
        .containsExactly("the grade of the screws of EC-1 and MC-1 is not given (screws: grade)");
  }

  @Test
  void withoutAWordOnRoofAndAirNothingIsAskedAndOneReasonIsGiven() {
    BaseJob job = job("site: {corrosivity: ~, setting: ~, module-temperatures: ~}\nroof: ~\n");

    assertThat(job.facts(MetalCouple.class)).isEmpty();
    assertThat(job.missing(MetalCouple.class))
        .containsExactlyElementsOf(job.missing(RoofLife.class))
        .containsExactly(
            "the job says nothing about the state of the roof and what meets it (roof)");
  }

  @Test
  void aCopperRoofIsAskedAboutEvenThen() {
    String over =
        """
        site: {corrosivity: ~, setting: ~, module-temperatures: ~}
        roof: ~
        panels: {steel seams: {metal: copper, coating: ~}}
        """;

    assertThat(body(job(over)).never()).isTrue();
  }

  @Test
  void aTinnedLugOnTheFrameIsAccepted() {
    assertThat(named(job(""), "lug LG-1"))
        .matches(fact -> fact.accepted() && fact.differenceV() == 0.25);
  }

  /** Job map G3: copper may lie below zinc, not above it [read]. */
  @ParameterizedTest
  @CsvSource({"8.5, 3", "0.5, 0", "3.69, 1"})
  void onlyModulesDownTheSlopeAreInTheWay(double upM, int below) {
    String over =
        """
        panels: {steel seams: {metal: stainless-steel, coating: ~}}
        parts: {seam-clamps: {SC-1: {metal: stainless-steel}}}
        planes:
          south:
            obstructions:
              skylight: ~
              fan curb: ~
              flue: ~
              vent: {metal: copper, at: [7 m, %s m]}
        """;
    RunoffOrder water = BaseJob.with("weathered-roof", over.formatted(upM)).only(RunoffOrder.class);

    assertThat(water.eaten()).isEqualTo(below);
  }

  @Test
  void aMetalThatHasToGoAnywayIsNotAskedAboutItsWater() {
    String over =
        "planes: {south: {obstructions: {skylight: ~, fan curb: ~, vent: {metal: copper}}}}";
    BaseJob job = BaseJob.with("weathered-roof", over);

    assertThat(named(job, "vent").never()).isTrue();
    assertThat(job.facts(RunoffOrder.class)).isEmpty();
  }

  /** Job map G3: copper or lead neither touches nor drains onto zinc or galvanised steel [read]. */
  @ParameterizedTest
  @CsvSource({
    "steel, G90, lead",
    "zinc, ~, lead",
    "steel, AZ50, lead",
    "steel, G90, copper",
    "zinc, ~, copper"
  })
  void aPadStopsTheTouchButNotTheWater(String sheet, String coating, String metal) {
    String over =
        """
        panels: {steel seams: {metal: %s, coating: %s}}
        planes: {south: {obstructions: {skylight: ~, fan curb: ~, vent: {metal: %s%s}}}}
        """;
    BaseJob bare = BaseJob.with("weathered-roof", over.formatted(sheet, coating, metal, ""));
    BaseJob padded =
        BaseJob.with("weathered-roof", over.formatted(sheet, coating, metal, ", isolated: yes"));

    assertThat(named(bare, "vent").never()).isTrue();
    assertThat(bare.facts(RunoffOrder.class)).isEmpty();
    assertThat(named(padded, "vent").isolated()).isTrue();
    assertThat(padded.only(RunoffOrder.class).eaten()).isEqualTo(1);
  }

  /**
   * Job map G3: copper neither touches nor drains onto aluminium, zinc, Al-Zn, galvanised [read].
   */
  @ParameterizedTest
  @CsvSource({
    "steel, AZ50, off-roof, bare, 1",
    "steel, G90, off-roof, bare, 1",
    "aluminium, ~, off-roof, bare, 1",
    "zinc, ~, off-roof, bare, 1",
    "copper, ~, off-roof, bare, 0",
    "steel, AZ50, off-roof, tinned, 0",
    "steel, AZ50, off-roof, insulated, 0",
    "steel, AZ50, on-roof, bare, 0"
  })
  void aBareConductorOnSupportsDripsOntoTheSheet(
      String sheet, String coating, String lies, String cover, int eaten) {
    String over =
        """
        panels: {steel seams: {metal: %s, coating: %s}}
        electrical:
          circuits:
            array: {grounding: {metal: copper, route: exposed, lies: %s, cover: %s}}
        """;
    BaseJob job = BaseJob.with("weathered-roof", over.formatted(sheet, coating, lies, cover));

    assertThat(conductor(job)).extracting(RunoffOrder::eaten).containsExactly(eaten);
  }

  private static List<RunoffOrder> conductor(BaseJob job) {
    return job.facts(RunoffOrder.class).stream()
        .filter(fact -> fact.obstruction().contains("conductor"))
        .toList();
  }

  @Test
  void whatRunsOverASheetOfUnknownMetalIsNotChecked() {
    BaseJob job =
        BaseJob.with(
            "weathered-roof",
            """
            panels: {steel seams: {coating: ~}}
            planes:
              south:
                obstructions: {skylight: ~, fan curb: ~, flue: ~, vent: {metal: copper}}
            electrical:
              circuits:
                array: {grounding: {metal: copper, route: exposed, lies: off-roof, cover: bare}}
            """);

    assertThat(job.facts(RunoffOrder.class)).isEmpty();
    assertThat(job.missing(RunoffOrder.class))
        .containsExactly("the coating of steel seams is not given (coating)");
  }

  @Test
  void aConductorOfUnknownCoverIsNotChecked() {
    BaseJob job =
        BaseJob.with(
            "weathered-roof",
            """
            electrical:
              circuits:
                array: {grounding: {metal: copper, route: exposed, lies: off-roof}}
                house: {grounding: {metal: aluminium, route: exposed, lies: off-roof}}
            """);

    assertThat(conductor(job)).isEmpty();
    assertThat(job.missing(RunoffOrder.class))
        .containsExactly(
            "what covers the grounding conductor of circuit array is not given (grounding: cover)");
  }

  /** 65 µm x 20^0.523, then 65 x 0.523 x 20^-0.477 in each of ten years more [computed]. */
  @Test
  void carbonSteelInC4LosesAThirdOfAMillimetreASide() {
    BaseJob job =
        BaseJob.with(
            "weathered-roof",
            """
            site: {corrosivity: C4}
            parts: {end-clamps: {EC-1: {screws: {metal: steel, grade: ~}}}}
            """);
    ScrewInAir screw = job.only(ScrewInAir.class);

    assertThat(screw.lossCoatingM()).isCloseTo(393e-6, within(0.5e-6));
    assertThat(screw.airRank()).isGreaterThan(screw.mostRank());
  }

  @Test
  void screwsOfOneGradeAreOneCause() {
    List<StainlessInAir> screws =
        job("parts: {end-clamps: {EC-1: {screws: {grade: A4}}}}\n").facts(StainlessInAir.class);

    assertThat(screws)
        .extracting(fact -> fact.cause().path() + ": " + fact.parts())
        .containsExactlyInAnyOrder(
            "parts / screws of A2: SC-1 and MC-1",
            "parts / screws of A2: SC-1 and MC-1",
            "parts / screws of A4: EC-1");
  }

  /** Handbook example 3.8: zinc in C3 at 1.5 µm, G90 is 19.3 µm and gone in 25 years [computed]. */
  @ParameterizedTest
  @CsvSource({
    "0, C3, 23.1, it goes in, heavier",
    "23, C3, 23.1, it goes in, heavier",
    "24, C3, 23.1, it went, red rust"
  })
  void zincThatShouldBeGoneIsLookedAtFirst(
      int years, String air, double lasts, String course, String cure) {
    String over =
        """
        site: {corrosivity: %s}
        panels: {steel seams: {coating: G90}}
        roof: {age: %d yr, array-life: 25 yr}
        """;
    ZincLife zinc = job(over.formatted(air, years)).only(ZincLife.class);

    assertThat(zinc.lossCoatingM()).isGreaterThan(zinc.hasCoatingM());
    assertThat(Units.YEAR.fromSi(zinc.lastsS())).isCloseTo(lasts, within(0.05));
    assertThat(zinc.course()).startsWith(course);
    assertThat(zinc.cure()).contains(cure);
  }
}
