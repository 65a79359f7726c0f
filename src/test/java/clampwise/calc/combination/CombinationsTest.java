package clampwise.calc.combination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.AsceEdition;
import clampwise.calc.Shipped;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Recomputed;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CombinationsTest {

  private static final AsceEdition OLD = AsceEdition.ASCE_7_16;
  private static final AsceEdition NEW = AsceEdition.ASCE_7_22;

  /** Case A-C1: a test of a public library. */
  @Test
  void aC1FloorAndRoofLiveLoadGovern() {
    Actions actions = dead(20).withLive(Effect.normal(50), Effect.normal(15)).withWind(10, 0);
    Governing governing = of(OLD, Method.LRFD).governing(actions);
    assertThat(governing.pressure()).isCloseTo(111.5, within(1e-9));
    assertThat(governing.down().name()).isEqualTo("1.2 D + 1.6 L + 0.5 Lr");
  }

  /** Case A-C2: a test of a public library. */
  @Test
  void aC2DeadLoadAgainstUplift() {
    Governing governing = of(OLD, Method.LRFD).governing(dead(100).withWind(0, -150));
    assertThat(governing.up().normalUp()).isCloseTo(-60, within(1e-9));
    assertThat(governing.uplift()).isCloseTo(60, within(1e-9));
    assertThat(governing.up().name()).isEqualTo("0.9 D + W");
  }

  /** Case A-C3 [computed]. */
  @ParameterizedTest
  @EnumSource(AsceEdition.class)
  void aC3UpliftInAllowableStressDesign(AsceEdition edition) {
    Governing governing = of(edition, Method.ASD).governing(dead(3).withWind(0, -36.38));
    assertThat(governing.up().normalUp()).isCloseTo(-20.03, within(5e-3));
    assertThat(governing.up().name()).isEqualTo("0.6 D + 0.6 W");
  }

  /** Case A-C4 [computed]. */
  @Test
  void aC4SnowAndWindOf716() {
    Actions actions = dead(3).withSnow(Effect.normal(20)).withWind(16, 0);
    assertThat(down(of(OLD, Method.ASD), "D + S", actions)).isCloseTo(23.0, within(1e-9));
    assertThat(of(OLD, Method.ASD).governing(actions).pressure()).isCloseTo(25.2, within(1e-9));
  }

  /** Case A-C5 [computed]; 0.7 S read in an article on 7-22. */
  @Test
  void aC5StrengthLevelSnowOf722() {
    Actions actions = dead(3).withSnow(Effect.normal(30)).withWind(16, 0);
    assertThat(down(of(NEW, Method.ASD), "D + 0.7 S", actions)).isCloseTo(24.0, within(1e-9));
    assertThat(of(NEW, Method.ASD).governing(actions).pressure()).isCloseTo(25.95, within(1e-9));
  }

  /** Case A-C6 [computed]; 1.0 S read in an article on 7-22. */
  @Test
  void aC6StrengthDesignOf722() {
    Actions actions = dead(3).withSnow(Effect.normal(30)).withWind(16, 0);
    Governing governing = of(NEW, Method.LRFD).governing(actions);
    assertThat(governing.pressure()).isCloseTo(41.6, within(1e-9));
    assertThat(governing.down().name()).isEqualTo("1.2 D + S + 0.5 W");
  }

  /** Case A-C8 [computed]. */
  @Test
  void aC8ComponentsOnFourInTwelve() {
    double slopeRad = Math.toRadians(18.435);
    Effect snow = SlopeComponents.onPlan(20, slopeRad);
    Effect dead = SlopeComponents.onSlope(3, slopeRad);
    assertThat(snow.normal()).isCloseTo(18.00, within(5e-3));
    assertThat(snow.along()).isCloseTo(6.00, within(5e-3));
    assertThat(dead.normal()).isCloseTo(2.846, within(5e-4));
    assertThat(dead.along()).isCloseTo(0.949, within(5e-4));
  }

  /** Worked example 3.8 [computed]: a module of 21.5 kg, 1722 by 1134 mm, on 4 on 12. */
  @Test
  void example38ModuleOnFourInTwelve() {
    double slopeRad = Math.atan2(4, 12);
    Effect weight = SlopeComponents.onSlope(210.8, slopeRad);
    Effect snow = SlopeComponents.onPlan(1000, slopeRad).times(1.722 * 1.134);
    assertThat(weight.along()).isCloseTo(66.7, within(0.05));
    assertThat(snow.along()).isCloseTo(586, within(0.5));
    assertThat(snow.normal()).isCloseTo(1757, within(0.5));
    assertThat(6 * (weight.along() + snow.along())).isCloseTo(3915, within(1.0));
  }

  /** 2.3.1 and 2.4.1: one row for each of Lr, S and R. */
  @ParameterizedTest
  @CsvSource({"ASD, 13", "LRFD, 14"})
  void alternativesStandAsRows(Method method, int rows) {
    assertThat(of(OLD, method).all()).hasSize(rows);
    assertThat(of(NEW, method).all()).hasSize(rows);
  }

  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, ASD, D + 0.75 L + 0.75 S + 0.45 W",
    "ASCE_7_22, ASD, D + 0.75 L + 0.525 S + 0.45 W",
    "ASCE_7_16, LRFD, 1.2 D + 1.6 L + 0.5 S",
    "ASCE_7_22, LRFD, 1.2 D + 1.6 L + 0.3 S",
    "ASCE_7_16, LRFD, 1.2 D + 1.6 S + 0.5 W",
    "ASCE_7_22, LRFD, 1.2 D + L + 0.3 S + W",
    "ASCE_7_22, LRFD, 1.2 D + 1.6 R + 0.5 W",
    "ASCE_7_16, LRFD, 1.4 D"
  })
  void combinationsAreThoseOfTheEdition(AsceEdition edition, Method method, String name) {
    assertThat(of(edition, method).all()).extracting(Combination::name).contains(name);
  }

  @Test
  void theDoubtfulSnowFactorOf722MayBeChosen() {
    Combinations severe = of(NEW, Method.LRFD).withCompanionSnow(0.5);
    assertThat(severe.all())
        .extracting(Combination::name)
        .contains("1.2 D + 1.6 L + 0.5 S", "1.2 D + L + 0.5 S + W", "1.2 D + S + 0.5 W")
        .doesNotContain("1.2 D + 1.6 L + 0.3 S");
    assertThat(of(OLD, Method.LRFD).withCompanionSnow(0.2)).isEqualTo(of(OLD, Method.LRFD));
  }

  /** EN 1990, 6.10, recommended factors; from memory: 1.35 x 0.15 + 1.5 x 0.8 + 0.9 x 0.4. */
  @Test
  void eurocodeSnowLeadsWithWindBesideIt() {
    Actions actions = dead(0.15).withSnow(Effect.normal(0.8)).withWind(0.4, -1.2);
    Governing governing = Combinations.of(recommended()).governing(actions);
    assertThat(governing.pressure()).isCloseTo(1.7625, within(1e-9));
    assertThat(governing.down().name()).isEqualTo("1.35 G + 1.5 S + 0.9 W");
    assertThat(governing.up().normalUp()).isCloseTo(0.15 - 1.8, within(1e-9));
    assertThat(governing.up().name()).isEqualTo("G + 1.5 W");
  }

  @Test
  void givenPartialFactorsStandAndMissingOnesAreAssumed() {
    PartialFactors.Given given =
        new PartialFactors.Given(
            java.util.Optional.empty(),
            java.util.Optional.of(0.9),
            java.util.Optional.empty(),
            java.util.Optional.of(0.7),
            java.util.Optional.empty());
    Work work = new Work(Measure.METRIC);
    PartialFactors factors = PartialFactors.of(table(), given, work);
    assertThat(factors).isEqualTo(new PartialFactors(1.35, 0.9, 1.5, 0.7, 0.6));
    assertThat(work.lines())
        .extracting(line -> line.note().startsWith("assumption"))
        .containsExactly(true, false, true, false, true);
  }

  @Test
  void windNeverLightensAPressureNorDeadLoadAlone() {
    Actions actions = dead(3).withSnow(Effect.normal(30));
    for (Method method : Method.values()) {
      Combinations combinations = of(NEW, method);
      assertThat(combinations.governing(actions.withWind(0, -50)).pressure())
          .isEqualTo(combinations.governing(actions).pressure());
    }
  }

  @Test
  void twiceTheActionsAreTwiceTheEffects() {
    Actions actions = Actions.of(new Effect(3, 1)).withSnow(new Effect(18, 6)).withWind(10, -36);
    Governing once = of(NEW, Method.ASD).governing(actions);
    Governing twice = of(NEW, Method.ASD).governing(actions.times(2));
    assertThat(twice.uplift()).isCloseTo(2 * once.uplift(), within(1e-9));
    assertThat(twice.pressure()).isCloseTo(2 * once.pressure(), within(1e-9));
    assertThat(twice.downSlope()).isCloseTo(2 * once.downSlope(), within(1e-9));
    assertThat(once.downSlope()).isCloseTo(1 + 0.7 * 6, within(1e-9));
  }

  /** 2 D + 3 L + 5 Lr + 7 S + 11 R + 13 W by hand, across the surface and down the slope. */
  @Test
  void everyActionCountsWithItsOwnFactor() {
    Combination all =
        new Combination("all", Source.STATICS, new Combination.Factors(2, 3, 5, 7, 11, 13));
    Actions actions =
        Actions.of(new Effect(1, 0.1))
            .withLive(new Effect(10, 0.2), new Effect(100, 0.3))
            .withSnow(new Effect(1000, 0.4))
            .withRain(new Effect(10_000, 0.5))
            .withWind(100_000, -200_000);
    Combined combined = all.of(actions);
    double still = 2 + 30 + 500 + 7000 + 110_000;
    assertThat(combined.normalDown()).isCloseTo(still + 1_300_000, within(1e-6));
    assertThat(combined.normalUp()).isCloseTo(still - 2_600_000, within(1e-6));
    assertThat(combined.alongSlope()).isCloseTo(0.2 + 0.6 + 1.5 + 2.8 + 5.5, within(1e-9));
    Work work = new Work(Measure.METRIC);
    CombinationWork lines = new CombinationWork(actions, Dimension.PRESSURE, work);
    for (CombinationWork.Part part : CombinationWork.Part.values()) {
      lines.write(combined, part);
    }
    Recomputed.check(work);
    assertThat(work.lines().get(2).inputs())
        .extracting(Term::meaning)
        .allMatch(meaning -> meaning.endsWith(", down the slope"));
  }

  @Test
  void ofCombinationsThatAgreeTheSimplestGoverns() {
    Governing governing = of(OLD, Method.ASD).governing(dead(3));
    assertThat(governing.down().name()).isEqualTo("D");
    assertThat(governing.along().name()).isEqualTo("D");
  }

  @Test
  void theLinesNameTheCombinationAndItsClause() {
    Work work = new Work(Measure.IMPERIAL);
    Actions actions = dead(3).withWind(0, -36.38);
    Governing governing = of(OLD, Method.ASD).governing(actions);
    new CombinationWork(actions, Dimension.PRESSURE, work).write(governing);
    assertThat(work.lines()).hasSize(3);
    assertThat(work.lines().get(0).formula()).isEqualTo("0.6*D_n+0.6*W_n");
    assertThat(work.lines().get(0).note()).isEqualTo("0.6 D + 0.6 W");
    assertThat(work.lines().get(0).source().clause()).isEqualTo("2.4.1, 7");
  }

  private static double down(Combinations combinations, String name, Actions actions) {
    List<Combined> effects = combinations.effects(actions);
    return effects.stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow()
        .normalDown();
  }

  private static Actions dead(double normal) {
    return Actions.of(Effect.normal(normal));
  }

  private static Combinations of(AsceEdition edition, Method method) {
    return Combinations.of(Shipped.combinations(edition), method);
  }

  private static PartialFactors recommended() {
    return PartialFactors.of(table(), PartialFactors.Given.nothing(), Shipped.work());
  }

  private static clampwise.calc.trail.Table table() {
    return Shipped.combinations(OLD).table("en-factors");
  }
}
