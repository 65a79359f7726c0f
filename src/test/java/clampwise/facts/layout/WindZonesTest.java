package clampwise.facts.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.job.Building.RoofShape;
import clampwise.job.Plane;
import clampwise.job.Plane.EdgeKind;
import clampwise.job.Site.LoadCode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Wind zones drawn on planes. Zone shapes: ASCE 7-16 and 7-22 figures 30.3-2A to 30.3-5A
 * [second-hand]; width of 6 ft for 60 ft x 100 ft, h = 20 ft [read].
 */
class WindZonesTest {

  private static final double FOOT_MM = 304.8;
  private static final double FOOT_M = 0.3048;
  private static final double SQUARE_FOOT_M2 = FOOT_M * FOOT_M;

  private final Jobs job = new Jobs();

  @Test
  void aGableOf716HasStripsOfSixFeetInPlanAndCornersWhereTheyCross() {
    roof(RoofShape.GABLE, LoadCode.ASCE_7_16, 100, 30, 18.434948822922);
    List<ZoneArea> zones = job.plane().zones();

    assertThat(zones).extracting(ZoneArea::name).containsExactly("3r", "3e", "2n", "2r", "2e", "1");
    assertThat(inPlanSquareFeet(zones, "3r")).isEqualTo(2 * 36, within(1e-3));
    assertThat(inPlanSquareFeet(zones, "3e")).isEqualTo(2 * 36, within(1e-3));
    assertThat(inPlanSquareFeet(zones, "2n")).isEqualTo(2 * 6 * 18, within(1e-3));
    assertThat(inPlanSquareFeet(zones, "2r")).isEqualTo(6 * 88, within(1e-3));
    assertThat(inPlanSquareFeet(zones, "2e")).isEqualTo(6 * 88, within(1e-3));
    assertThat(inPlanSquareFeet(zones, "1")).isEqualTo(18 * 88, within(1e-3));
    assertThat(zones).allMatch(zone -> zone.figure().equals("ASCE 7-16 figure 30.3-2B"));
  }

  @Test
  void stripsAlongTheEaveAreLongerUpTheSlopeThanInPlan() {
    roof(RoofShape.GABLE, LoadCode.ASCE_7_16, 100, 30, 18.434948822922);
    ZoneLookup zones = new ZoneLookup(job.plane().zones());
    double cosine = 3 / Math.sqrt(10);

    assertThat(zones.at(50 * FOOT_M, 6 * FOOT_M / cosine - 0.001).orElseThrow().name())
        .isEqualTo("2e");
    assertThat(zones.at(50 * FOOT_M, 6 * FOOT_M / cosine + 0.001).orElseThrow().name())
        .isEqualTo("1");
    assertThat(zones.at(6 * FOOT_M + 0.001, 15 * FOOT_M).orElseThrow().name()).isEqualTo("1");
    assertThat(zones.at(6 * FOOT_M - 0.001, 15 * FOOT_M).orElseThrow().name()).isEqualTo("2n");
  }

  @Test
  void aPointOnABorderLiesInTheMoreSevereZone() {
    roof(RoofShape.GABLE, LoadCode.ASCE_7_22, 100, 30, 18.434948822922);
    ZoneLookup zones = new ZoneLookup(job.plane().zones());

    assertThat(zones.at(6 * FOOT_M, 10 * FOOT_M).orElseThrow().name()).isEqualTo("2");
    assertThat(zones.at(-1, 10)).isEmpty();
  }

  @Test
  void aGableOf722HasNoEaveStrip() {
    roof(RoofShape.GABLE, LoadCode.ASCE_7_22, 100, 30, 18.434948822922);
    List<ZoneArea> zones = job.plane().zones();

    assertThat(zones).extracting(ZoneArea::name).containsExactly("3", "2", "1");
    assertThat(inPlanSquareFeet(zones, "3")).isEqualTo(2 * 36, within(1e-3));
    assertThat(inPlanSquareFeet(zones, "2")).isEqualTo(2 * 6 * 24 + 6 * 88, within(1e-3));
    assertThat(inPlanSquareFeet(zones, "1")).isEqualTo(24 * 88, within(1e-3));
  }

  @Test
  void aFlatRoofHasBandsOfSixTenthsOfItsHeightAndCornersShapedLikeAnL() {
    roof(RoofShape.FLAT, LoadCode.ASCE_7_22, 100, 80, 0);
    List<ZoneArea> zones = job.plane().zones();

    assertThat(zones).extracting(ZoneArea::name).containsExactly("3", "2", "1", "1'");
    assertThat(inPlanSquareFeet(zones, "3")).isEqualTo(4 * (2 * 12 * 4 - 16), within(1e-3));
    assertThat(inPlanSquareFeet(zones, "2") + inPlanSquareFeet(zones, "3"))
        .isEqualTo(100 * 80 - 76 * 56, within(1e-3));
    assertThat(inPlanSquareFeet(zones, "1")).isEqualTo(76 * 56 - 52 * 32, within(1e-3));
    assertThat(inPlanSquareFeet(zones, "1'")).isEqualTo(52 * 32, within(1e-3));
  }

  @Test
  void theRidgeOfALowGableIsNotAnEdgeOfTheBuilding() {
    roof(RoofShape.GABLE, LoadCode.ASCE_7_22, 100, 80, 5);
    List<ZoneArea> zones = job.plane().zones();

    assertThat(inPlanSquareFeet(zones, "3")).isEqualTo(2 * (2 * 12 * 4 - 16), within(1e-3));
    assertThat(inPlanSquareFeet(zones, "1'")).isEqualTo(52 * 56, within(1e-3));
  }

  @Test
  void aMonoslopeHasItsWideStripsAndCornersAtTheHighEdge() {
    roof(RoofShape.MONOSLOPE, LoadCode.ASCE_7_16, 100, 60, 6);
    List<ZoneArea> zones = job.plane().zones();

    assertThat(zones).extracting(ZoneArea::name).containsExactly("3'", "2'", "3", "2", "1");
    assertThat(inPlanSquareFeet(zones, "3'")).isEqualTo(2 * 24 * 12, within(1e-3));
    assertThat(inPlanSquareFeet(zones, "2'")).isEqualTo(52 * 12, within(1e-3));
    assertThat(inPlanSquareFeet(zones, "3")).isEqualTo(2 * 12 * 12, within(1e-3));
  }

  @Test
  void aHipRoofHasItsCornersWhereHipAndEaveMeet() {
    roof(RoofShape.HIP, LoadCode.ASCE_7_16, 100, 30, 18.434948822922);
    double upMm = 30 * FOOT_MM * Math.sqrt(10) / 3;
    job.corners =
        List.of(
            corner(0, 0, EdgeKind.EAVE),
            corner(100 * FOOT_MM, 0, EdgeKind.HIP),
            corner(70 * FOOT_MM, upMm, EdgeKind.RIDGE),
            corner(30 * FOOT_MM, upMm, EdgeKind.HIP));
    List<ZoneArea> zones = job.plane().zones();
    double total = zones.stream().mapToDouble(zone -> zone.area().getArea()).sum();

    assertThat(zones).extracting(ZoneArea::name).containsExactly("3", "2r", "2e", "1");
    assertThat(total).isEqualTo(job.plane().outline().orElseThrow().getArea(), within(1e-4));
    assertThat(inPlanSquareFeet(zones, "3")).isEqualTo(2 * cornerUnderHip(6), within(1e-2));
  }

  /** Between the eave, a line at height a, and two lines at 45 degrees that are a apart. */
  private static double cornerUnderHip(double a) {
    return a * a * Math.sqrt(2);
  }

  @Test
  void aWallOrAnExpansionJointHasNoStrip() {
    roof(RoofShape.GABLE, LoadCode.ASCE_7_22, 100, 30, 18.434948822922);
    job.edges =
        Optional.of(
            new Plane.RectangleEdges(
                Optional.empty(),
                Optional.empty(),
                Optional.of(Jobs.choice(EdgeKind.EXPANSION_JOINT)),
                Optional.of(Jobs.choice(EdgeKind.WALL))));

    assertThat(job.plane().zones()).extracting(ZoneArea::name).containsExactly("2", "1");
  }

  @Test
  void aModuleAstrideABorderLiesInBothZones() {
    roof(RoofShape.GABLE, LoadCode.ASCE_7_22, 100, 30, 18.434948822922);
    job.block = Optional.of(Jobs.block(6 * FOOT_MM - 100, 3000, 1, 1));
    PlaneLayout plane = job.plane();

    assertThat(new ZoneLookup(plane.zones()).of(plane.fields().get(0).modules().get(0)))
        .extracting(ZoneArea::name)
        .containsExactly("2", "1");
  }

  @Test
  void aModuleThatOnlyTouchesABorderLiesInOneZone() {
    roof(RoofShape.GABLE, LoadCode.ASCE_7_22, 100, 30, 18.434948822922);
    job.block = Optional.of(Jobs.block(6 * FOOT_MM, 3000, 1, 1));
    PlaneLayout plane = job.plane();

    assertThat(new ZoneLookup(plane.zones()).of(plane.fields().get(0).modules().get(0)))
        .extracting(ZoneArea::name)
        .containsExactly("1");
  }

  @Test
  void whatIsMissingForTheZonesIsNamed() {
    assertThat(job.plane().zonesUnknown())
        .contains("the edition of the load standard is not given (site: codes: loads)");
    roof(RoofShape.GABLE, LoadCode.ASCE_7_22, 100, 30, 18);
    job.slope = Optional.empty();
    assertThat(job.plane().zonesUnknown())
        .contains("the slope of the plane is not given (planes: south: slope)");
    roof(RoofShape.HIP, LoadCode.EN_1991, 100, 30, 18);
    assertThat(job.plane().zonesUnknown())
        .contains("hip roofs of EN 1991-1-4 are not part of this version");
    roof(RoofShape.GABLE, LoadCode.EN_1991, 60, 30, 18);
    assertThat(job.plane().zonesUnknown())
        .hasValueSatisfying(why -> assertThat(why).startsWith("the plane covers a part of"));
  }

  private void roof(
      RoofShape shape, LoadCode code, double alongFeet, double planFeet, double degrees) {
    WindJobs.roof(job, shape, code, new double[] {alongFeet, planFeet, degrees});
  }

  private static Plane.Corner corner(double alongMm, double upMm, EdgeKind edge) {
    return new Plane.Corner(Jobs.spot(alongMm, upMm), Jobs.choice(edge));
  }

  private double inPlanSquareFeet(List<ZoneArea> zones, String name) {
    double slopeRad = job.slope.orElseThrow().rad();
    return zones.stream()
        .filter(zone -> zone.name().equals(name))
        .mapToDouble(zone -> zone.area().getArea() * Math.cos(slopeRad) / SQUARE_FOOT_M2)
        .sum();
  }
}
