package clampwise.facts.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.job.Building.RoofShape;
import clampwise.job.Plane;
import clampwise.job.Plane.EdgeKind;
import clampwise.job.Site.LoadCode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Corners of wind zones in plan, in feet, worked out by hand for a = 6 ft. Monoslope: handbook part
 * 3.1, figure 30.3-5A [second-hand]. Hip: strips of a along eave, hip and ridge, zone 3 where eave
 * and hip strip cross; from memory.
 */
class ZoneCornersTest {

  private static final double FOOT_M = 0.3048;
  private static final double FOOT_MM = 304.8;
  private static final double PITCH_4_IN_12 = Math.toDegrees(Math.atan2(4, 12));

  /** A hip at 45 degrees in plan cuts 6 ft times the root of 2 off a line along the eave: 8.485. */
  private static final String HIP_CORNERS =
      "MULTIPOLYGON (((0 0, 8.485281 0, 14.485281 6, 6 6, 0 0)),"
          + " ((100 0, 94 6, 85.514719 6, 91.514719 0, 100 0)))";

  private static final String HIP_FIELD =
      "POLYGON ((14.485281 6, 85.514719 6, 67.514719 24, 32.485281 24, 14.485281 6))";

  private final Jobs job = new Jobs();

  /** The high edge lies at 60 ft. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "3'|MULTIPOLYGON (((0 48, 24 48, 24 60, 0 60, 0 48)),"
            + " ((76 48, 100 48, 100 60, 76 60, 76 48)))",
        "2'|POLYGON ((24 48, 76 48, 76 60, 24 60, 24 48))",
        "3|MULTIPOLYGON (((0 0, 12 0, 12 12, 0 12, 0 0)),"
            + " ((88 0, 100 0, 100 12, 88 12, 88 0)))",
        "2|MULTIPOLYGON (((12 0, 88 0, 88 6, 12 6, 12 0)), ((0 12, 6 12, 6 48, 0 48, 0 12)),"
            + " ((94 12, 100 12, 100 48, 94 48, 94 12)))",
        "1|POLYGON ((12 6, 88 6, 88 12, 94 12, 94 48, 6 48, 6 12, 12 12, 12 6))"
      })
  void aMonoslopeOfSixDegrees(String zone, String corners) {
    WindJobs.roof(job, RoofShape.MONOSLOPE, LoadCode.ASCE_7_22, new double[] {100, 60, 6});
    lies(zone, corners);
  }

  /** Up to 3 degrees figure 30.3-2A: 0.6 h = 12 ft, 0.2 h = 4 ft; the high edge has corners too. */
  @Test
  void aMonoslopeOfTwoDegreesHasAnLAtEachOfItsFourCorners() {
    WindJobs.roof(job, RoofShape.MONOSLOPE, LoadCode.ASCE_7_16, new double[] {100, 60, 2});
    lies(
        "3",
        "MULTIPOLYGON (((0 0, 12 0, 12 4, 4 4, 4 12, 0 12, 0 0)),"
            + " ((100 0, 100 12, 96 12, 96 4, 88 4, 88 0, 100 0)),"
            + " ((100 60, 88 60, 88 56, 96 56, 96 48, 100 48, 100 60)),"
            + " ((0 60, 0 48, 4 48, 4 56, 12 56, 12 60, 0 60)))");
    lies("1'", "POLYGON ((24 24, 76 24, 76 36, 24 36, 24 24))");
  }

  @Test
  void aMonoslopeAboveTenDegreesIsNotDrawn() {
    WindJobs.roof(job, RoofShape.MONOSLOPE, LoadCode.ASCE_7_16, new double[] {100, 60, 10});
    assertThat(job.plane().zonesUnknown()).isEmpty();
    WindJobs.roof(job, RoofShape.MONOSLOPE, LoadCode.ASCE_7_16, new double[] {100, 60, 10.5});
    assertThat(job.plane().zonesUnknown()).contains("figure 30.3-5B is not part of this version");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3|" + HIP_CORNERS,
        "2r|POLYGON ((6 6, 14.485281 6, 32.485281 24, 67.514719 24, 85.514719 6, 94 6, 70 30,"
            + " 30 30, 6 6))",
        "2e|POLYGON ((8.485281 0, 91.514719 0, 85.514719 6, 14.485281 6, 8.485281 0))",
        "1|" + HIP_FIELD
      })
  void theLongSideOfAHipRoofOf716(String zone, String corners) {
    hip(LoadCode.ASCE_7_16, PITCH_4_IN_12);
    lies(zone, corners);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3|" + HIP_CORNERS,
        "2|POLYGON ((8.485281 0, 91.514719 0, 85.514719 6, 94 6, 70 30, 30 30, 6 6, 14.485281 6,"
            + " 8.485281 0), (14.485281 6, 32.485281 24, 67.514719 24, 85.514719 6, 14.485281 6))",
        "1|" + HIP_FIELD
      })
  void theLongSideOfAHipRoofOf722(String zone, String corners) {
    hip(LoadCode.ASCE_7_22, PITCH_4_IN_12);
    lies(zone, corners);
  }

  /** The strips along both hips meet 8.485 ft below the top of the triangle. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3|MULTIPOLYGON (((0 0, 8.485281 0, 14.485281 6, 6 6, 0 0)),"
            + " ((60 0, 54 6, 45.514719 6, 51.514719 0, 60 0)))",
        "2r|POLYGON ((6 6, 14.485281 6, 30 21.514719, 45.514719 6, 54 6, 30 30, 6 6))",
        "2e|POLYGON ((8.485281 0, 51.514719 0, 45.514719 6, 14.485281 6, 8.485281 0))",
        "1|POLYGON ((14.485281 6, 45.514719 6, 30 21.514719, 14.485281 6))"
      })
  void theEndOfAHipRoof(String zone, String corners) {
    WindJobs.roof(job, RoofShape.HIP, LoadCode.ASCE_7_16, new double[] {60, 30, PITCH_4_IN_12});
    double upMm = onSlopeMm(30);
    job.corners =
        List.of(
            corner(0, 0, EdgeKind.EAVE),
            corner(60 * FOOT_MM, 0, EdgeKind.HIP),
            corner(30 * FOOT_MM, upMm, EdgeKind.HIP));
    lies(zone, corners);
  }

  /** 7-22 counts its hip figures from E to G, 7-16 from E to I. */
  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, 15, ASCE 7-16 figure 30.3-2E",
    "ASCE_7_16, 25, ASCE 7-16 figure 30.3-2G",
    "ASCE_7_16, 40, ASCE 7-16 figure 30.3-2H",
    "ASCE_7_22, 15, ASCE 7-22 figure 30.3-2E",
    "ASCE_7_22, 25, ASCE 7-22 figure 30.3-2F",
    "ASCE_7_22, 40, ASCE 7-22 figure 30.3-2G"
  })
  void aHipRoofNamesTheFigureOfItsEdition(LoadCode code, double degrees, String figure) {
    hip(code, degrees);
    assertThat(job.plane().zones()).extracting(ZoneArea::figure).isNotEmpty().containsOnly(figure);
  }

  private void hip(LoadCode code, double degrees) {
    WindJobs.roof(job, RoofShape.HIP, code, new double[] {100, 30, degrees});
    double upMm = onSlopeMm(30);
    job.corners =
        List.of(
            corner(0, 0, EdgeKind.EAVE),
            corner(100 * FOOT_MM, 0, EdgeKind.HIP),
            corner(70 * FOOT_MM, upMm, EdgeKind.RIDGE),
            corner(30 * FOOT_MM, upMm, EdgeKind.HIP));
  }

  private double onSlopeMm(double planFeet) {
    return planFeet * FOOT_MM / Math.cos(job.slope.orElseThrow().rad());
  }

  private static Plane.Corner corner(double alongMm, double upMm, EdgeKind edge) {
    return new Plane.Corner(Jobs.spot(alongMm, upMm), Jobs.choice(edge));
  }

  /** A zone covers what its corners enclose, and nothing else: to a thousandth of a square foot. */
  private void lies(String zone, String corners) {
    Geometry drawn = inPlanFeet(zone);
    Geometry wanted = wanted(corners);
    assertThat(drawn.getArea()).isCloseTo(wanted.getArea(), within(1e-3));
    Geometry apart = OverlayNGRobust.overlay(drawn, wanted, OverlayNG.SYMDIFFERENCE);
    assertThat(apart.getArea()).as(drawn::toText).isLessThan(1e-3);
  }

  private Geometry inPlanFeet(String zone) {
    double upPerM = Math.cos(job.slope.orElseThrow().rad()) / FOOT_M;
    List<Geometry> found = new ArrayList<>();
    job.plane().zones().stream()
        .filter(area -> area.name().equals(zone))
        .forEach(area -> found.add(area.area()));
    assertThat(found).as("zone " + zone).hasSize(1);
    return AffineTransformation.scaleInstance(1 / FOOT_M, upPerM).transform(found.get(0));
  }

  private static Geometry wanted(String corners) {
    try {
      return new WKTReader().read(corners);
    } catch (ParseException e) {
      throw new AssertionError(corners, e);
    }
  }
}
