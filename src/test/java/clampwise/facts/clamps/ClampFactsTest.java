package clampwise.facts.clamps;

import static clampwise.facts.clamps.ClampJobs.of;
import static clampwise.facts.clamps.ClampJobs.reasons;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.Fact;
import clampwise.facts.Facts;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Clamps on modules, held against numbers worked out by hand. */
class ClampFactsTest {

  private static final double TENTH_MM = 1e-4;

  private static final String JOB =
      """
      job: clamps
      panels:
        sheet: {kind: standing-seam, pitch: 16 in}
      planes:
        roof: {panel: sheet, size: 30 m x 8 m, seams: {first: 8 in}}
      modules:
        M:
          length: 1722 mm
          width: 1134 mm
          frame-height: 30 mm
          loads-are: test
          clamp-zones:
            - {side: long, zone: 234 to 326 mm, down: 5400 Pa, up: 2400 Pa}
            - {side: long, zone: 0 to 430 mm, down: 2400 Pa, up: 2400 Pa}
      parts:
        seam-clamps:
          SC: {profiles: [double-lock]}
        mid-clamps:
          MC: {frame-height: 33 to 37 mm, gap: 12 mm}
          MC-LOW: {frame-height: 28 to 33 mm}
          MC-LOWER: {frame-height: 29 to 31 mm}
        end-clamps:
          EC: {frame-height: 28 to 33 mm}
      fields:
        A:
          plane: roof
          module: M
          orientation: landscape
          attachment: SC
          mid-clamp: MC
          end-clamp: EC
          gap: 12 mm
          attach: {per-edge: 2}
          block: {at: [20 ft, 8 ft], rows: 2, columns: 2}
      """;

  /** First seam 8 in, pitch 16 in: seams 16 and 19 cross the module at 203.2 and 1422.4 mm. */
  @Test
  void theClampsDistanceFromTheCornerFollowsTheSeams() {
    Facts facts = facts("{per-edge: 2}", "{lines: {all: [17, 19, 20, 23]}}");

    assertThat(of(ZoneGrip.class, facts).get(0).fromCornerM()).isCloseTo(0.6096, within(TENTH_MM));
    assertThat(of(ZoneGrip.class, facts).get(0).better())
        .isEqualTo("move it to seam 16, 203.2 mm from the corner");
  }

  /** Test loads 5400/2400 Pa are design loads 3600/1600 Pa: IEC 61215-2, factor 1.5 [read]. */
  @Test
  void onlyRowsThatCarryTheDesignLoadCount() {
    Facts light = withDesignLoad("{down: 1600 Pa, up: 1600 Pa}");
    Facts heavy = withDesignLoad("{down: 1601 Pa, up: 1600 Pa}");

    assertThat(of(RowPhase.class, light)).extracting(RowPhase::inZone).containsOnly(2);
    assertThat(of(RowPhase.class, heavy)).extracting(RowPhase::inZone).containsOnly(0);
    assertThat(of(SideLoad.class, heavy))
        .extracting(SideLoad::ratedPa)
        .containsExactly(3600.0, 1600.0);
  }

  @Test
  void aLoadNoRowCarriesLeavesTheZoneUnchecked() {
    Facts facts = withDesignLoad("{down: 3601 Pa}");

    assertThat(of(ZoneGrip.class, facts)).isEmpty();
    assertThat(reasons(ZoneGrip.class, facts))
        .containsExactly("no row of M for its long side carries the design load (clamp-zones)");
  }

  @Test
  void clampsThatFitAreNamedTheBestCentredFirst() {
    assertThat(of(MidClampFit.class, facts("", "")))
        .extracting(fit -> fit.fitting().orElse(""))
        .containsOnly("MC-LOWER or MC-LOW");
  }

  @Test
  void oneWrongClampIsOneCauseHoweverManyModulesItHolds() {
    List<MidClampFit> fits = of(MidClampFit.class, facts("", ""));

    assertThat(fits).hasSize(4);
    assertThat(fits)
        .extracting(Fact::cause)
        .extracting(Object::toString)
        .containsOnly("mid clamp MC / module type M");
  }

  /** Two rows of two: four clamps on each of three lines, the middle ones count for both rows. */
  @Test
  void aMidClampCountsForBothOfItsModules() {
    assertThat(of(ClampsOnModule.class, facts("", "")))
        .hasSize(4)
        .allSatisfy(held -> assertThat(held.clamps()).isEqualTo(4))
        .allSatisfy(held -> assertThat(held.onWeakestEdge()).isEqualTo(2));
  }

  @Test
  void gapsAreMeasuredOnceForEachPairOfNeighbours() {
    List<ModuleGap> gaps = of(ModuleGap.class, facts("", ""));

    assertThat(gaps).hasSize(4);
    assertThat(gaps).extracting(ModuleGap::gapM).containsOnly(0.012);
    assertThat(gaps).extracting(ModuleGap::leastM).containsOnly(0.00635);
  }

  @Test
  void whatIsNotGivenIsNotChecked() {
    Facts facts =
        ClampJobs.facts(
            JOB.replace("    frame-height: 30 mm\n", "")
                .replace("    attach: {per-edge: 2}\n", ""));

    assertThat(reasons(EndClampFit.class, facts))
        .containsExactly("the frame height of module M is not given (frame-height)");
    assertThat(reasons(ClampsOnModule.class, facts)).hasSize(1);
    assertThat(reasons(ListedPart.class, facts))
        .contains("module M gives no list of parts it is listed with (listed-with)");
    assertThat(reasons(RatingUsed.class, facts))
        .containsExactly("field A does not say which side's rating is used (rating-used)");
  }

  @Test
  void aClampThatDoesNotGripTheFrameIsNotAlsoToldAsUnlisted() {
    Facts facts = facts("loads-are: test", "loads-are: test\n    listed-with: [SC, EC]");

    assertThat(of(ListedPart.class, facts))
        .extracting(ListedPart::part)
        .containsExactlyInAnyOrder("SC", "EC");
  }

  private static Facts withDesignLoad(String load) {
    return facts("attach: {per-edge: 2}", "attach: {per-edge: 2}\n    design-load: " + load);
  }

  private static Facts facts(String written, String instead) {
    return ClampJobs.facts(written.isEmpty() ? JOB : JOB.replace(written, instead));
  }
}
