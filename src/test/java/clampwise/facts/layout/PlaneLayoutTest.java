package clampwise.facts.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.job.Count;
import clampwise.job.Plane;
import clampwise.job.Plane.EdgeKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Outlines, edges, seams and purlins of a plane. */
class PlaneLayoutTest {

  private final Jobs job = new Jobs();

  @BeforeEach
  void aFieldOfOneModule() {
    job.block = Optional.of(Jobs.block(600, 1000, 1, 1));
  }

  @Test
  void aRectangleHasEaveBelowRidgeAboveAndRakesAtTheSides() {
    PlaneLayout plane = job.plane();

    assertThat(plane.edges())
        .extracting(PlaneEdge::kind)
        .containsExactly(EdgeKind.EAVE, EdgeKind.RAKE, EdgeKind.RIDGE, EdgeKind.RAKE);
    assertThat(plane.outline().orElseThrow().getArea()).isEqualTo(200, within(1e-9));
  }

  @Test
  void seamsRunFromTheFirstAtThePitchAsFarAsTheOutline() {
    job.seams = Optional.of(Jobs.nominal(150, 400));
    List<SeamLine> seams = job.plane().seams();

    assertThat(seams).hasSize(50);
    assertThat(seams.get(49).alongM()).isEqualTo(19.75);
    assertThat(seams.get(49).number()).isEqualTo(50);
    assertThat(seams).allMatch(seam -> seam.fromUpM() == 0 && seam.toUpM() == 10);
  }

  @Test
  void aSurveyedSeamKeepsItsNominalPlaceBesideTheMeasuredOne() {
    job.seams = Optional.of(Jobs.surveyed(100, 503, 905));
    List<SeamLine> seams = job.plane().seams();

    assertThat(seams).extracting(SeamLine::alongM).containsExactly(0.1, 0.503, 0.905);
    assertThat(seams)
        .extracting(SeamLine::nominalM)
        .containsExactly(OptionalDouble.of(0.1), OptionalDouble.of(0.5), OptionalDouble.of(0.9));
    assertThat(seams).allMatch(SeamLine::surveyed);
  }

  @Test
  void aSurveyThatRunsBackwardsIsReported() {
    job.seams = Optional.of(Jobs.surveyed(100, 905, 503));
    job.plane();

    assertThat(job.found()).containsExactly("a seam that is not to the right of the one before");
  }

  @Test
  void withoutAFirstSeamThereAreNone() {
    job.seams = Optional.empty();

    assertThat(job.plane().seams()).isEmpty();
  }

  @Test
  void aPitchOfZeroIsReportedAndDoesNotHang() {
    job.seams = Optional.of(Jobs.nominal(0, 0));
    job.purlins = Optional.of(purlins(0, 0));

    assertThat(job.plane().seams()).isEmpty();
    assertThat(job.found())
        .containsExactly("more than 10000 purlins", "more than 100000 seams on a plane");
  }

  @Test
  void aWrittenCountOfSeamsIsKept() {
    Plane.Seams fitting = Jobs.nominal(0, 400);
    Optional<Count> five = Optional.of(Jobs.count(5));
    job.seams =
        Optional.of(
            new Plane.Seams(fitting.first(), fitting.pitch(), five, List.of(), Optional.empty()));

    assertThat(job.plane().seams()).hasSize(5);
  }

  @Test
  void aSeamIsCutAtAHipAndInterruptedByANotch() {
    job.corners =
        List.of(
            corner(0, 0, EdgeKind.EAVE),
            corner(8000, 0, EdgeKind.HIP),
            corner(4000, 4000, EdgeKind.RIDGE),
            corner(3000, 4000, EdgeKind.RAKE),
            corner(3000, 3000, EdgeKind.RAKE),
            corner(500, 3000, EdgeKind.RAKE),
            corner(500, 2000, EdgeKind.RAKE),
            corner(3000, 2000, EdgeKind.RAKE),
            corner(3000, 1000, EdgeKind.RAKE),
            corner(0, 1000, EdgeKind.RAKE));
    job.seams = Optional.of(Jobs.nominal(1000, 5000));
    List<SeamLine> seams = job.plane().seams();

    assertThat(seams).extracting(SeamLine::number).containsExactly(1, 1, 2);
    assertThat(seams).extracting(SeamLine::fromUpM).containsExactly(0.0, 2.0, 0.0);
    assertThat(seams).extracting(SeamLine::toUpM).containsExactly(1.0, 3.0, 2.0);
  }

  @Test
  void aClockwiseOutlineIsTheSameRoof() {
    job.corners =
        List.of(
            corner(0, 0, EdgeKind.RAKE),
            corner(0, 4000, EdgeKind.RIDGE),
            corner(6000, 4000, EdgeKind.RAKE),
            corner(6000, 0, EdgeKind.EAVE));
    PlaneLayout plane = job.plane();

    assertThat(job.found()).isEmpty();
    assertThat(plane.edges())
        .filteredOn(edge -> edge.kind() == EdgeKind.EAVE)
        .allMatch(edge -> edge.line().p0.y == 0 && edge.line().p1.y == 0 && edge.line().p1.x > 0);
  }

  @Test
  void anOutlineThatCrossesItselfIsReported() {
    job.corners =
        List.of(
            corner(0, 0, EdgeKind.EAVE),
            corner(6000, 0, EdgeKind.RAKE),
            corner(0, 4000, EdgeKind.RIDGE),
            corner(6000, 4000, EdgeKind.RAKE));

    assertThat(job.plane().outline()).isEmpty();
    assertThat(job.found())
        .containsExactly("an outline that crosses or touches itself near this corner");
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "6000, 4000"})
  void aCornerTwiceIsReported(double alongMm, double upMm) {
    job.corners =
        List.of(
            corner(0, 0, EdgeKind.EAVE),
            corner(6000, 0, EdgeKind.RAKE),
            corner(6000, 4000, EdgeKind.RIDGE),
            corner(alongMm, upMm, EdgeKind.RAKE));

    assertThat(job.plane().outline()).isEmpty();
    assertThat(job.found()).containsExactly("a corner where the one before it lies");
  }

  @Test
  void anOutlineOfTwoCornersIsReported() {
    job.corners = List.of(corner(0, 0, EdgeKind.EAVE), corner(6000, 0, EdgeKind.RAKE));
    job.plane();

    assertThat(job.found()).containsExactly("an outline of 2 corners");
  }

  @Test
  void purlinsRunFromTheFirstAtTheirSpacing() {
    job.purlins = Optional.of(purlins(500, 1500));

    assertThat(job.plane().supports()).containsExactly(0.5, 2.0, 3.5, 5.0, 6.5, 8.0, 9.5);
  }

  @Test
  void theNearestMinorRibIsKnownAlsoLeftOfTheFirstSeam() {
    job.seams = Optional.of(Jobs.nominal(300, 400));
    job.minorRibs = List.of(Jobs.mm(133), Jobs.mm(267));
    job.block = Optional.of(Jobs.block(0, 1000, 1, 1));
    job.attach = Optional.of(Jobs.points(30, 1000, 435, 1000));

    assertThat(job.field().attachments())
        .extracting(attachment -> attachment.nearestMinorRibM().orElseThrow())
        .containsExactly(0.003, 0.002);
  }

  private static Plane.Purlins purlins(double firstMm, double spacingMm) {
    return new Plane.Purlins(
        Optional.of(Jobs.offset(firstMm)), Optional.of(Jobs.mm(spacingMm)), List.of());
  }

  private static Plane.Corner corner(double alongMm, double upMm, EdgeKind edge) {
    return new Plane.Corner(Jobs.spot(alongMm, upMm), Jobs.choice(edge));
  }
}
