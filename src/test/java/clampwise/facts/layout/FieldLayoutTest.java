package clampwise.facts.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.Neighbour.Side;
import clampwise.job.Field;
import clampwise.job.Field.Orientation;
import clampwise.job.Plane.EdgeKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Modules of blocks and free columns, and what lies beside them. */
class FieldLayoutTest {

  private final Jobs job = new Jobs();

  @Test
  void aBlockIsPlacedFromItsLowerLeftCorner() {
    job.block = Optional.of(Jobs.block(600, 1000, 2, 3, "R2C3"));
    List<PlacedModule> modules = job.field().modules();
    PlacedModule last = modules.get(4);

    assertThat(modules)
        .extracting(PlacedModule::name)
        .containsExactly("A.R1C1", "A.R2C1", "A.R1C2", "A.R2C2", "A.R1C3");
    assertThat(last.leftM()).isEqualTo(0.6 + 2 * 1.734, within(1e-9));
    assertThat(last.topM()).isEqualTo(2.134, within(1e-9));
  }

  @Test
  void portraitTurnsTheLongSideUpTheSlope() {
    job.orientation = Orientation.PORTRAIT;
    job.block = Optional.of(Jobs.block(600, 1000, 1, 1));
    PlacedModule module = job.field().modules().get(0);

    assertThat(module.alongM()).isEqualTo(1.134);
    assertThat(module.upM()).isEqualTo(1.722);
  }

  @Test
  void aFreeColumnWithoutAPlaceStandsBesideTheOneBefore() {
    job.columns =
        List.of(column(Optional.of(Jobs.spot(600, 1000)), 2), column(Optional.empty(), 3, 2));
    List<PlacedModule> modules = job.field().modules();

    assertThat(modules)
        .extracting(PlacedModule::name)
        .containsExactly("A.R1C1", "A.R2C1", "A.R1C2", "A.R3C2");
    assertThat(modules.get(2).leftM()).isEqualTo(0.6 + 1.722 + 0.012, within(1e-9));
    assertThat(modules.get(3).bottomM()).isEqualTo(1.0 + 2 * 1.146, within(1e-9));
  }

  @Test
  void columnsOfDifferentStartHaveLinesOfTheirOwn() {
    job.columns =
        List.of(
            column(Optional.of(Jobs.spot(600, 1000)), 2),
            column(Optional.of(Jobs.spot(2400, 1500)), 1));
    job.attach = Optional.of(Jobs.perEdge(2));
    FieldLayout field = job.field();

    assertThat(field.lines()).containsExactly(1.0, 1.5, 2.14, 2.634, 3.28);
    assertThat(field.attachments()).hasSize(10);
    assertThat(field.attachments())
        .filteredOn(attachment -> attachment.kind() == Kind.MID)
        .isNotEmpty()
        .allMatch(attachment -> attachment.line() == 3);
  }

  /** A line of one column next to the edge of another must not take its clamps. */
  @Test
  void columnsStaggeredByHalfAGapStillHoldBothTheirModules() {
    job.columns =
        List.of(
            column(Optional.of(Jobs.spot(600, 1000)), 2),
            column(Optional.of(Jobs.spot(2400, 994)), 2));
    job.attach = Optional.of(Jobs.perEdge(2));

    assertThat(job.field().attachments())
        .filteredOn(attachment -> attachment.kind() == Kind.MID)
        .hasSize(4);
  }

  @Test
  void aModuleOfAnotherSizeShiftsThoseAboveIt() {
    job.otherTypes.put("tall", Jobs.module(1722, 1234));
    job.otherModules = Jobs.named(Map.of("R1C1", Jobs.text("tall")));
    job.block = Optional.of(Jobs.block(600, 1000, 2, 1));
    List<PlacedModule> modules = job.field().modules();

    assertThat(modules.get(0).typeName()).isEqualTo("tall");
    assertThat(modules.get(1).bottomM()).isEqualTo(1.0 + 1.234 + 0.012, within(1e-9));
  }

  @Test
  void placesThatAreNotInTheFieldAreReportedWithTheNearest() {
    job.block = Optional.of(Jobs.block(600, 1000, 2, 2, "R2C9"));
    job.otherModules = Jobs.named(Map.of("R7C1", Jobs.text("M")));
    job.field();

    assertThat(job.found())
        .containsExactly(
            "R2C9, which is no place of this block", "R7C1, which is no module of this field");
    assertThat(job.problems.sorted()).allMatch(problem -> problem.nearest().isPresent());
  }

  @Test
  void aFieldWhoseGapNobodyGivesIsNotLaidOut() {
    job.gap = Optional.empty();
    job.block = Optional.of(Jobs.block(600, 1000, 2, 2));

    assertThat(job.layout().fields()).isEmpty();
    assertThat(job.found()).containsExactly("a field whose gap between modules is not given");
  }

  @Test
  void absurdlyManyModulesAreReportedInsteadOfPlaced() {
    job.block = Optional.of(Jobs.block(600, 1000, 2_000_000, 2_000_000));

    assertThat(job.layout().fields()).isEmpty();
    assertThat(job.found()).containsExactly("4000000000000 modules in one field");
  }

  @Test
  void neighboursAreFoundOnEachSide() {
    job.block = Optional.of(Jobs.block(600, 1000, 3, 3));
    PlaneLayout plane = job.plane();
    PlacedModule middle = plane.fields().get(0).modules().get(4);
    ModuleIndex index = ModuleIndex.of(plane);

    assertThat(Arrays.stream(Side.values()).map(side -> only(index, middle, side).module().name()))
        .containsExactly("A.R2C1", "A.R2C3", "A.R1C2", "A.R3C2");
    assertThat(only(index, middle, Side.RIGHT).gapM()).isEqualTo(0.012);
    assertThat(only(index, middle, Side.ABOVE).sharedM()).isEqualTo(1.722);
    assertThat(index.overlapping(middle)).isEmpty();
  }

  @Test
  void overlappingModulesAreFoundButTouchingOnesAreNot() {
    job.gap = Optional.of(Jobs.mm(0));
    job.columns =
        List.of(
            column(Optional.of(Jobs.spot(600, 1000)), 2),
            column(Optional.of(Jobs.spot(2321, 1000)), 1));
    List<PlacedModule> modules = job.field().modules();
    ModuleIndex index = ModuleIndex.of(modules);

    assertThat(index.overlapping(modules.get(0)))
        .extracting(PlacedModule::name)
        .containsExactly("A.R1C2");
  }

  /** 4:12: cosine 3 / sqrt(10) [computed]. */
  @Test
  void theDistanceToTheEaveIsShorterInPlanAndToTheRakeItIsTheSame() {
    job.slope = Optional.of(Jobs.degrees(Math.toDegrees(Math.atan(1 / 3.0))));
    job.block = Optional.of(Jobs.block(600, 1000, 1, 1));
    PlaneLayout plane = job.plane();
    PlacedModule module = plane.fields().get(0).modules().get(0);
    EdgeDistance eave = EdgeDistance.nearest(plane, module, EdgeKind.EAVE).orElseThrow();
    EdgeDistance rake = EdgeDistance.nearest(plane, module, EdgeKind.RAKE).orElseThrow();

    assertThat(eave.inPlaneM()).isEqualTo(1.0);
    assertThat(eave.inPlanM().orElseThrow()).isEqualTo(3 / Math.sqrt(10), within(1e-7));
    assertThat(rake.inPlaneM()).isEqualTo(0.6);
    assertThat(rake.inPlanM().orElseThrow()).isEqualTo(0.6);
  }

  @Test
  void aModuleAcrossAnEdgeIsAtDistanceZero() {
    job.block = Optional.of(Jobs.block(-100, 1000, 1, 1));
    PlaneLayout plane = job.plane();

    assertThat(
            EdgeDistance.nearest(plane, plane.fields().get(0).modules().get(0), EdgeKind.RAKE)
                .orElseThrow()
                .inPlaneM())
        .isZero();
  }

  /** Mirroring roof and field left to right mirrors every clamp. */
  @Test
  void theMirrorImageOfALayoutHasTheMirroredClamps() {
    for (int startMm = 600; startMm < 1000; startMm += 37) {
      List<Double> clamps = clamps(startMm);
      List<Double> mirrored = clamps(20_000 - startMm - (5 * 1722 + 4 * 12));

      assertThat(mirrored)
          .usingComparatorForType(
              (a, b) -> Math.abs(a - b) < 1e-6 ? 0 : Double.compare(a, b), Double.class)
          .containsExactlyElementsOf(clamps.stream().map(m -> 20 - m).sorted().toList());
    }
  }

  /** 100,000 modules; all pairs would be ten thousand million. */
  @Test
  void aHundredThousandModulesAreLaidOutWithTheirClampsAndNeighbours() {
    job.size = Jobs.size(1_800_000, 120_000);
    job.block = Optional.of(Jobs.block(600, 1000, 100, 1000));
    job.attach = Optional.of(Jobs.perEdge(2));
    FieldLayout field = job.field();
    ModuleIndex index = ModuleIndex.of(field.modules());

    assertThat(field.modules()).hasSize(100_000);
    assertThat(field.attachments()).hasSize(2 * 101 * 1000);
    assertThat(field.edges()).isNotEmpty().allMatch(edge -> edge.attachments().size() == 2);
    assertThat(
            field.modules().stream().mapToInt(m -> index.beside(m, Side.RIGHT, 0.1).size()).sum())
        .isEqualTo(99_900);
  }

  private List<Double> clamps(double startMm) {
    Jobs mirror = new Jobs();
    mirror.module = Jobs.module(1722, 1134, Jobs.zone(150, 500, 1600), Jobs.zone(234, 326, 3600));
    mirror.block = Optional.of(Jobs.block(startMm, 1000, 1, 5));
    mirror.attach = Optional.of(Jobs.perEdge(2));
    return mirror.field().attachments().stream()
        .filter(attachment -> attachment.line() == 1)
        .map(Attachment::alongM)
        .sorted()
        .toList();
  }

  private static Neighbour only(ModuleIndex index, PlacedModule module, Side side) {
    List<Neighbour> beside = index.beside(module, side, 0.02);
    assertThat(beside).hasSize(1);
    return beside.get(0);
  }

  private static Field.Column column(Optional<clampwise.job.Spot> at, int modules, int... omit) {
    return new Field.Column(
        at,
        Jobs.count(modules),
        new ArrayList<>(IntStream.of(omit).mapToObj(Jobs::count).toList()));
  }
}
