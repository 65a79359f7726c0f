package clampwise.facts.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import clampwise.units.Unit;
import org.junit.jupiter.api.Test;

/** Frames on the roof, where they hang together and what moves between them. */
class FrameMovementTest {

  /**
   * Handbook 3.3 [computed]: twelve modules of 1,146 mm over 60 K differ from steel by 9.6 mm, 0.80
   * mm a joint, with 12.0 for steel. The table's lower end for steel, 11.7, gives 9.6 x 11.9/11.6.
   */
  @Test
  void twelveModulesOutgrowSteelByTheHandbooksExample() {
    FrameJoint fact =
        seams(
                """
                site: {lowest-temperature: 0 °C}
                panels: {steel seams: {hottest: 60 °C}}
                planes: {south: {size: 100 ft x 60 ft}}
                fields: {A: {block: {at: [20 ft, 8 ft], rows: 12, columns: 1}}}
                """)
            .only(FrameJoint.class);

    assertThat(fact.lengthM()).isCloseTo(13.752, within(1e-9));
    assertThat(fact.movementM() * 11.6 / 11.9 * 1000).isCloseTo(9.6, within(0.05));
    assertThat(fact.jointM() * 11.6 / 11.9 * 1000).isCloseTo(0.80, within(0.005));
  }

  @Test
  void aSingleRowHasNoJointsUpTheSlope() {
    assertThat(
            seams("fields: {A: {block: {at: [20 ft, 8 ft], rows: 1, columns: 4}}}")
                .facts(FrameJoint.class))
        .isEmpty();
  }

  @Test
  void columnsAreTiedUpTheSlopeAndStandApartAlongTheEave() {
    assertThat(seams("{}").facts(ModuleRun.class))
        .extracting(ModuleRun::direction, ModuleRun::runM)
        .containsExactly(tuple("up the slope", 3.426), tuple("along the eave", 1.722));
  }

  @Test
  void framesThatTouchAreOneRun() {
    assertThat(seams("fields: {A: {column-gap: 0 mm}}").facts(ModuleRun.class))
        .filteredOn(run -> run.direction().equals("along the eave"))
        .singleElement()
        .satisfies(run -> assertThat(run.runM()).isCloseTo(4 * 1.722, within(1e-7)))
        .satisfies(run -> assertThat(run.to()).isEqualTo("A.R1C4"));
  }

  /** 20 ft and five modules of 1722 mm are 14.706 m: the next field begins there [computed]. */
  @Test
  void fieldsWhoseFramesTouchAreOneRun() {
    BaseJob job =
        seams(
            """
            fields:
              A: {column-gap: 0 mm, block: {at: [20 ft, 8 ft], rows: 3, columns: 5}}
              B: {like: A, block: {at: [14.706 m, 8 ft], rows: 2, columns: 4}}
              C: {like: A, block: {at: [20 ft, 5.8644 m], rows: 1, columns: 1}}
            """);

    assertThat(job.facts(ModuleRun.class))
        .extracting(ModuleRun::direction, ModuleRun::to, ModuleRun::runM)
        .containsExactly(
            tuple("up the slope", "C.R1C1", 4.56),
            tuple("along the eave", "B.R1C4", 15.498),
            tuple("up the slope", "B.R2C1", 2.28),
            tuple("along the eave", "B.R1C4", 6.888),
            tuple("up the slope", "C.R1C1", 1.134),
            tuple("along the eave", "C.R1C1", 1.722));
  }

  @Test
  void aModuleLeftOutEndsTheRun() {
    assertThat(
            seams(
                    """
                    planes: {south: {size: 100 ft x 60 ft}}
                    fields: {A: {block: {at: [20 ft, 8 ft], rows: 6, columns: 1, omit: [R3C1]}}}
                    """)
                .facts(ModuleRun.class))
        .filteredOn(run -> run.direction().equals("up the slope"))
        .extracting(ModuleRun::from, ModuleRun::to)
        .containsExactly(tuple("A.R4C1", "A.R6C1"));
  }

  @Test
  void aMidClampThatNobodyNamesLeavesTheRunUnchecked() {
    BaseJob job = seams("fields: {A: {mid-clamp: ~}}");

    assertThat(job.missing(ModuleRun.class))
        .containsExactly("field A names no known mid clamp (mid-clamp)");
    assertThat(job.missing(FrameJoint.class))
        .containsExactly("field A names no known mid clamp (mid-clamp)");
    assertThat(seams("parts: {mid-clamps: {MC-1: {slack: ~}}}").missing(FrameJoint.class))
        .containsExactly("the slack of mid clamp MC-1 is not given (slack)");
  }

  @Test
  void aJointIsMeasuredToTheNearestModulesOfAllFields() {
    JointCrossing fact =
        seams(
                """
                planes: {south: {expansion-joints: [13050 mm]}}
                fields:
                  A: {block: {at: [6096 mm, 8 ft], rows: 3, columns: 4}}
                  B: {like: A, block: {at: [13080 mm, 8 ft], rows: 3, columns: 1}}
                claims: ~
                """)
            .facts(JointCrossing.class)
            .get(0);

    assertThat(fact.crossing()).isEqualTo("A.R1C4 and B.R1C1 meet over");
    assertThat(fact.gapM()).isCloseTo(13.080 - (6.096 + 4 * 1.722 + 3 * 0.012), within(1e-7));
  }

  @Test
  void noGapAtAllIsSaidInInches() {
    JointCrossing fact =
        seams(
                """
                planes: {south: {expansion-joints: [7 m]}}
                fields: {A: {block: {at: [20 ft, 8 ft]}}}
                """)
            .facts(JointCrossing.class)
            .get(0);

    assertThat(fact.gapM()).isZero();
    assertThat(fact.units().get("gapM")).isEqualTo(Unit.INCH);
  }

  @Test
  void jointsAreAskedForOnLongRoofsOnly() {
    assertThat(seams("{}").missing(JointCrossing.class)).isEmpty();
    assertThat(seams("planes: {south: {size: 210 ft x 40 ft}}").missing(JointCrossing.class))
        .containsExactly(
            "where the expansion joints of plane south lie is not given (expansion-joints), and it is long enough to"
                + " have one");
    assertThat(
            seams("planes: {south: {size: 210 ft x 40 ft, expansion-joints: []}}")
                .missing(JointCrossing.class))
        .isEmpty();
  }

  /** Steel 12.06 x (10 + 20)/2 m x 100 K: halves of both sections move toward the joint. */
  @Test
  void overAnExpansionJointTheBuildingMovesTheJumper() {
    JumperSlack fact =
        seams(
                """
                planes: {south: {size: 30 m x 9 m, expansion-joints: [10 m]}}
                fields:
                  A:
                    block: ~
                    columns: [{at: [8 m, 2 m], modules: 2}, {at: [10.2 m, 2 m], modules: 2}]
                claims: ~
                """)
            .only(JumperSlack.class);

    assertThat(fact.movementM()).isCloseTo(12.06e-6 * 15 * 100, within(1e-9));
    assertThat(fact.leastM()).isCloseTo(2 * fact.movementM(), within(1e-7));
  }

  @Test
  void jumpersNamedOneByOneBridgeWhatLiesBetweenTheirFrames() {
    JumperSlack fact =
        seams("bonding: {jumpers: [{from: A.R1C3, to: A.R1C1}]}").only(JumperSlack.class);

    assertThat(fact.from()).isEqualTo("A.R1C1");
    assertThat(fact.movementM()).isCloseTo(11.9e-6 * 2 * 1.734 * 100, within(1e-9));
  }

  private static BaseJob seams(String over) {
    return BaseJob.with("seam-roof", over);
  }
}
