package clampwise.facts.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import org.junit.jupiter.api.Test;

/**
 * Where modules lie on the seam roof, worked out by hand: the plane is 30480 mm by 9639.3 mm; four
 * columns of 1722 mm with gaps of 12 mm are 6924 mm wide, three rows of 1134 mm are 3426 mm high.
 */
class ModulePlacesTest {

  private static final String AT = "at: [20 ft, 8 ft], rows: 3";
  private static final String VENT = "at: [80 ft, 16 ft]";
  private static final double CLOSE = 1e-9;

  @Test
  void allModulesInsideTheirPlaneAreOneAnswer() {
    assertThat(RoofJobs.seams().facts(ModuleInPlane.class))
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.module()).isEqualTo("12 modules");
              assertThat(fact.overM()).isZero();
            });
  }

  @Test
  void aColumnOverTheRakeIsMeasuredModuleByModule() {
    // 30480 - 6924 + 50 = 23606 mm.
    BaseJob job = RoofJobs.seams(AT, "at: [23606 mm, 8 ft], rows: 3");

    assertThat(job.facts(ModuleInPlane.class))
        .filteredOn(fact -> fact.overM() > 0)
        .hasSize(3)
        .allSatisfy(fact -> assertThat(fact.edge()).isEqualTo("rake"))
        .allSatisfy(fact -> assertThat(fact.overM()).isCloseTo(0.050, within(CLOSE)));
    assertThat(job.facts(ModuleInPlane.class))
        .extracting(ModuleInPlane::module)
        .contains("9 modules");
  }

  @Test
  void aRowOverTheRidgeLeavesItsPlaneButNotTheRoof() {
    // 9639.3 - 3426 + 30 = 6243.3 mm.
    BaseJob job = RoofJobs.seams(AT, "at: [20 ft, 6243.3 mm], rows: 3");

    assertThat(job.facts(ModuleOnOnePlane.class))
        .filteredOn(fact -> fact.overM() > 0)
        .extracting(ModuleOnOnePlane::module)
        .containsExactly("A.R3C1", "A.R3C2", "A.R3C3", "A.R3C4");
    assertThat(job.facts(ModuleOnOnePlane.class))
        .filteredOn(fact -> fact.overM() > 0)
        .allSatisfy(fact -> assertThat(fact.edge()).isEqualTo("ridge"))
        .allSatisfy(fact -> assertThat(fact.overM()).isCloseTo(0.030, within(CLOSE)));
  }

  @Test
  void aPlaneWithoutSizeIsNotChecked() {
    BaseJob job =
        RoofJobs.seams(
            "    size: 100 ft x 31 ft 7 1/2 in\n",
            "",
            "seams: {first: 8 in}",
            "seams: {first: 8 in, count: 70}");

    assertThat(job.missing(ModuleInPlane.class))
        .containsExactly("the size of plane south is not given (size)");
    assertThat(job.missing(ModuleOnOnePlane.class))
        .containsExactly("the size of plane south is not given (size)");
  }

  @Test
  void modulesOfTwoFieldsOverlapByTheSmallerExtent() {
    // Field A starts at 6096 mm; a module from 4392 mm ends at 6114 mm.
    String second =
        "\n  B: {like: A, block: {at: [4392 mm, 8 ft], rows: 1, columns: 1}}\n\nbonding:";
    BaseJob job = RoofJobs.seams("\nbonding:", second);

    assertThat(job.facts(ModuleOverlap.class))
        .filteredOn(fact -> fact.overlapM() > 0)
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.module()).isEqualTo("B.R1C1");
              assertThat(fact.other()).isEqualTo("A.R1C1");
              assertThat(fact.overlapM()).isCloseTo(0.018, within(CLOSE));
            });
  }

  @Test
  void aVentBesideTheFieldIsMeasuredToItsBody() {
    // The vent ends at 5691.2 + 304.8 = 5996 mm, 100 mm before the field.
    BaseJob job = RoofJobs.seams(VENT, "at: [5691.2 mm, 2500 mm]");

    assertThat(job.facts(ObstacleClearance.class))
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.module()).isEqualTo("A.R1C1");
              assertThat(fact.gapM()).isCloseTo(0.100, within(CLOSE));
              assertThat(fact.clearanceM()).isCloseTo(0.3048, within(CLOSE));
              assertThat(fact.moveM()).isCloseTo(0.2048, within(CLOSE));
            });
  }

  @Test
  void aVentUnderAModuleIsCoveredAndNotAlsoTooNear() {
    BaseJob job = RoofJobs.seams(VENT, "at: [5816.6 mm, 2500 mm]");

    assertThat(job.facts(ObstacleCover.class))
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.module()).isEqualTo("A.R1C1");
              assertThat(fact.coverM()).isCloseTo(0.0254, within(CLOSE));
            });
    assertThat(job.facts(ObstacleClearance.class))
        .extracting(ObstacleClearance::module)
        .containsExactly("no module");
  }

  @Test
  void aVentWithoutClearanceIsNotChecked() {
    assertThat(RoofJobs.seams(", clearance: 12 in", "").missing(ObstacleClearance.class))
        .containsExactly("the clearance of vent is not given (clearance)");
  }
}
