package clampwise.takeoff;

import static clampwise.takeoff.TakenOffJobs.block;
import static clampwise.takeoff.TakenOffJobs.drawn;
import static clampwise.takeoff.TakenOffJobs.file;
import static clampwise.takeoff.TakenOffJobs.line;
import static clampwise.takeoff.TakenOffJobs.of;
import static clampwise.takeoff.TakenOffJobs.quantities;
import static clampwise.takeoff.TakenOffJobs.replaced;
import static clampwise.takeoff.TakenOffJobs.written;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.review.TakenOff;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Take-offs against counts made by hand on the drawing. */
class QuantitiesTest {

  private static final String L_SHAPED = "examples/dairy-l-shaped/job.yaml";
  private static final String PACKED = "\ntakeoff: {modules-per-pallet: 31}\n";
  private static final double HOUR_S = 3600;

  /**
   * A worked example, computed by hand: 4 rows of 10 with two clamps an edge have 5 lines of 20
   * attachments; of these the two outer lines hold one row each.
   */
  @Test
  void fourRowsOfTenTakeWhatTheWorkedExampleCounts() {
    Quantities field = quantities(block("rows: 4, columns: 10"));
    assertThat(drawn(field, PartKind.MODULE)).isEqualTo(40);
    assertThat(drawn(field, PartKind.SEAM_CLAMP)).isEqualTo(100);
    assertThat(drawn(field, PartKind.END_CLAMP)).isEqualTo(40);
    assertThat(drawn(field, PartKind.MID_CLAMP)).isEqualTo(60);
    assertThat(drawn(field, PartKind.JUMPER)).as("a tree: columns - 1").isEqualTo(9);
    assertThat(drawn(field, PartKind.LUG)).isEqualTo(1);
    assertThat(drawn(field, PartKind.SEAM_CLAMP) / 40.0).isEqualTo(2.5);
  }

  /** The same example: a loop at both ends has 2 (columns - 1) jumpers. */
  @Test
  void aLoopAtBothEndsOfTheColumnsHasTwiceTheJumpersOfATree() {
    TakenOff job =
        of(
            written("rows: 4, columns: 10")
                .replace("    - {field: A}\n", "    - {field: A}\n    - {field: A, row: 4}\n"));
    assertThat(drawn(quantities(job), PartKind.JUMPER)).isEqualTo(18);
  }

  /** The same example: 40 modules at 90 s (common practice, no source) are 1.0 h of placement. */
  @Test
  void placementIsAnHourForFortyModulesAndOnlyAPartOfTheWork() {
    Crew crew = quantities(block("rows: 4, columns: 10")).crew().orElseThrow();
    assertThat(crew.seconds(CrewPhase.PLACEMENT)).isEqualTo(1.0 * HOUR_S);
    assertThat(crew.seconds(CrewPhase.ATTACHMENTS)).isPositive();
    assertThat(crew.seconds(CrewPhase.SET_UP)).isPositive();
    assertThat(crew.seconds()).isGreaterThan(4 * crew.seconds(CrewPhase.PLACEMENT));
  }

  /**
   * By hand, column by column, two clamps an edge. A: five columns of 4 (10 attachments, 4 of them
   * ends), one of 1 and 2 around the vent (4 + 6, 8 ends), four of 2 (6, 4 ends). B: one of 3 (8, 4
   * ends), one of 1 and 2 (10, 8 ends). Jumpers: 9 and 1 in the lowest rows, 2 around gaps.
   */
  @Test
  void theLShapedFieldIsCountedAsDrawnAndNotAsRowsTimesColumns() {
    Quantities dairy = quantities(file(L_SHAPED, Optional.empty()));
    int ends = 5 * 4 + 8 + 4 * 4 + 4 + 8;
    int all = 5 * 10 + 10 + 4 * 6 + 8 + 10;
    assertThat(drawn(dairy, PartKind.MODULE)).isEqualTo(31 + 6).isNotEqualTo(4 * 10 + 6);
    assertThat(drawn(dairy, PartKind.SEAM_CLAMP)).isEqualTo(all).isEqualTo(102);
    assertThat(drawn(dairy, PartKind.END_CLAMP)).isEqualTo(ends).isEqualTo(56);
    assertThat(drawn(dairy, PartKind.MID_CLAMP)).isEqualTo(all - ends).isEqualTo(46);
    assertThat(drawn(dairy, PartKind.JUMPER)).isEqualTo(9 + 1 + 2);
    assertThat(drawn(dairy, PartKind.LUG)).isEqualTo(2);
  }

  /** 37 modules of 1.722 m along the eave are 63.7 m; a clip every 24 in makes 104.5. */
  @Test
  void wireClipsFollowTheRowsThatAreThere() {
    Quantities dairy = quantities(file(L_SHAPED, Optional.empty()));
    assertThat(drawn(dairy, PartKind.WIRE_CLIP)).isEqualTo(105);
    assertThat(dairy.runs().get(0).lengthM()).isCloseTo(63.714, within(1e-6));
    assertThat(dairy.notCounted()).isEmpty();
  }

  /** Rails under the L: rows 1 and 3 of A are cut at no gap, row 2 by the vent, B stands apart. */
  @Test
  void railsAreCutWhereTheRowsAre() {
    Comparison rails = quantities(file(L_SHAPED, Optional.empty())).comparison().orElseThrow();
    int runs = 1 + 2 + 1 + 1 + 1 + 1 + 1 + 1;
    int modules = 37;
    assertThat(rails.railed().endClamps()).isEqualTo(4 * runs);
    assertThat(rails.railed().midClamps()).isEqualTo(2 * (modules - runs));
    assertThat(rails.railed().lugs()).isEqualTo(runs);
    assertThat(rails.drawn().railM()).isZero();
    assertThat(rails.railed().hardwareKg().orElseThrow())
        .isGreaterThan(2 * rails.drawn().hardwareKg().orElseThrow());
  }

  /** Rail-less hardware is about 0.5 to 1.0 kg a module: from memory. */
  @Test
  void theInventedPartsWeighWhatRailLessHardwareUsuallyDoes() {
    Comparison barn =
        quantities(file("examples/barn/job.yaml", Optional.empty())).comparison().orElseThrow();
    assertThat(barn.drawn().hardwareKg().orElseThrow() / 48).isBetween(0.5, 1.0);
  }

  @Test
  void spareModulesAreNotOrderedAndSparePartsAreRoundedUp() {
    Quantities dairy = quantities(file(L_SHAPED, Optional.empty()));
    assertThat(line(dairy, PartKind.MODULE).order()).isEqualTo(37);
    assertThat(line(dairy, PartKind.SEAM_CLAMP).order()).as("102 + 3.06").isEqualTo(106);
    assertThat(line(dairy, PartKind.LUG).order()).isEqualTo(3);
  }

  @Test
  void theShareOfSparesThatIsAskedForGoesBeforeTheOneOfTheJob() {
    Quantities dairy = quantities(file(L_SHAPED, Optional.of(0.0)));
    assertThat(line(dairy, PartKind.SEAM_CLAMP).order()).isEqualTo(102);
    assertThat(quantities(file(L_SHAPED, Optional.of(0.05))).spares()).isEqualTo(0.05);
  }

  @Test
  void massesAddUpToTheFreight() {
    Quantities dairy = quantities(file(L_SHAPED, Optional.empty()));
    double modulesKg = 37 * 21.5;
    double hardwareKg = 106 * 0.16 + 48 * 0.07 + 58 * 0.07 + 13 * 0.05 + 3 * 0.04 + 109 * 0.003;
    assertThat(dairy.freight().orElseThrow().modulesKg().orElseThrow())
        .isCloseTo(modulesKg, within(1e-9));
    assertThat(dairy.freight().orElseThrow().hardwareKg().orElseThrow())
        .isCloseTo(hardwareKg, within(1e-9));
    assertThat(dairy.freight().orElseThrow().totalKg().orElseThrow())
        .isCloseTo(modulesKg + hardwareKg + 2 * 40, within(1e-9));
  }

  @Test
  void palletsAreARangeUntilTheJobSaysHowModulesArePacked() {
    Freight open = quantities(block("rows: 4, columns: 8")).freight().orElseThrow();
    assertThat(open.fewest()).as("32 / 36").isEqualTo(1);
    assertThat(open.most()).as("32 / 26").isEqualTo(2);
    Freight said = quantities(of(written("rows: 4, columns: 8") + PACKED)).freight().orElseThrow();
    assertThat(said.fewest()).isEqualTo(said.most()).isEqualTo(2);
  }

  @Test
  void whatIsNotGivenIsListedAsNotCounted() {
    Quantities bare = quantities(replaced("attach: {per-edge: 2}", "attach: ~"));
    assertThat(bare.notCounted())
        .extracting(NotCounted::what)
        .contains("attachments and clamps of field A", "wire clips", "grounding conductor");
    assertThat(bare.comparison()).isEmpty();
    assertThat(bare.crew()).isEmpty();
    assertThat(bare.freight()).isEmpty();
    assertThat(drawn(bare, PartKind.MODULE)).isEqualTo(12);
    assertThat(drawn(bare, PartKind.SEAM_CLAMP)).isZero();
  }

  @Test
  void aPartWithoutAMassLeavesTheFreightUnknownAndSaysSo() {
    Quantities light = quantities(replaced("mass: 0.16 kg", "mass: ~"));
    assertThat(light.freight().orElseThrow().hardwareKg()).isEmpty();
    assertThat(light.freight().orElseThrow().totalKg()).isEmpty();
    assertThat(light.notCounted())
        .extracting(NotCounted::what)
        .contains("the mass of seam clamp SC-1");
  }

  @Test
  void withoutBondingTheMassOfTheHardwareIsNotKnown() {
    String job = written("rows: 3, columns: 4");
    Quantities loose = quantities(of(job.replaceAll("(?s)\\nbonding:.*?\\nclaims:", "\nclaims:")));
    assertThat(loose.notCounted()).extracting(NotCounted::what).contains("jumpers and lugs");
    assertThat(loose.freight().orElseThrow().modulesKg()).isPresent();
    assertThat(loose.freight().orElseThrow().hardwareKg()).isEmpty();
    assertThat(loose.comparison().orElseThrow().drawn().hardwareKg()).isEmpty();
  }

  @Test
  void aPartWithoutANameIsCountedAsSuch() {
    Quantities unnamed = quantities(replaced("    end-clamp: EC-1\n", ""));
    assertThat(line(unnamed, PartKind.END_CLAMP).part().name()).isEmpty();
    assertThat(drawn(unnamed, PartKind.END_CLAMP)).isEqualTo(16);
  }

  @Test
  void aFieldThatCannotBeLaidOutIsNamedAndNothingIsCompared() {
    TakenOff job = replaced("plane: south\n    module", "plane: nowhere\n    module");
    assertThat(job.problems()).isNotEmpty();
    Quantities left = job.quantities().orElseThrow();
    assertThat(left.lines()).isEmpty();
    assertThat(left.comparison()).isEmpty();
    assertThat(left.notCounted()).extracting(NotCounted::what).contains("field A");
  }

  @Test
  void aJobWithoutModulesSaysSoAndComparesNothing() {
    Quantities none = quantities(of("job: empty roof\n"));
    assertThat(none.notCounted()).extracting(NotCounted::what).contains("modules");
    assertThat(none.crew()).isEmpty();
    assertThat(none.comparison()).isEmpty();
  }

  @Test
  void aTextThatIsNoJobHasProblemsAndNoQuantities() {
    TakenOff job = of("- nothing\n");
    assertThat(job.problems()).isNotEmpty();
    assertThat(job.quantities()).isEmpty();
  }
}
