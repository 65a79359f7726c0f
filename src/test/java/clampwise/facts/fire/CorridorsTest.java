package clampwise.facts.fire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Corridors counted from distances, held against corridors found by wearing the free area down. */
class CorridorsTest {

  private static final GeometryFactory SHAPES = new GeometryFactory();
  private static final double ALONG_M = 9;
  private static final double UP_M = 6;

  /** 36 in of the International Fire Code, 1204.2.1.1 of 2018. */
  private static final double WIDTH_M = 0.9144;

  private static final Way WAY =
      new Way(
          List.of(new LineSegment(0, 0, ALONG_M, 0)),
          List.of(new LineSegment(ALONG_M, UP_M, 0, UP_M)),
          List.of(new LineSegment(0, UP_M, 0, 0)),
          List.of(new LineSegment(ALONG_M, 0, ALONG_M, UP_M)));

  @Test
  void aCorridorIsThereWhereAWheelOfItsWidthRollsFromEaveToRidge() {
    Random random = new Random(12);
    int open = 0;
    for (int n = 0; n < 400; n++) {
      List<Blocker> blockers = blockers(random);
      boolean rolls = wheelRolls(blockers);
      open += rolls ? 1 : 0;
      assertThat(Corridors.count(blockers, WAY, WIDTH_M, 1))
          .as("layout " + n)
          .isEqualTo(rolls ? 1 : 0);
    }
    assertThat(open).isBetween(80, 340);
  }

  @Test
  void lessOnTheRoofNeverMeansFewerCorridors() {
    Random random = new Random(7);
    for (int n = 0; n < 100; n++) {
      List<Blocker> blockers = blockers(random);
      List<Blocker> fewer = blockers.subList(1, blockers.size());
      assertThat(Corridors.count(fewer, WAY, WIDTH_M, 4))
          .isGreaterThanOrEqualTo(Corridors.count(blockers, WAY, WIDTH_M, 4));
    }
  }

  @Test
  void aBlockInTheMiddleLeavesOneCorridorOnEitherSide() {
    Blocker middle = block(WIDTH_M, 1, ALONG_M - WIDTH_M, 5);
    assertThat(Corridors.count(List.of(middle), WAY, WIDTH_M, 5)).isEqualTo(2);
  }

  @Test
  void anEmptyPlaneHoldsAsManyAsItIsWide() {
    assertThat(Corridors.count(List.of(), WAY, WIDTH_M, 20)).isEqualTo(9);
  }

  /**
   * A hundred thousand modules in two fields with a path between: near-linear, so within seconds.
   */
  @Test
  void aHundredThousandModulesTakeNoLongerThanOneCanWait() {
    List<Blocker> blockers = new ArrayList<>();
    for (int column = 0; column < 400; column++) {
      double leftM = 1 + column * 2.01 + (column < 200 ? 0 : WIDTH_M);
      for (int row = 0; row < 250; row++) {
        blockers.add(block(leftM, 1 + row * 1.26, leftM + 2, 2.25 + row * 1.26));
      }
    }
    Way wide =
        new Way(
            List.of(),
            List.of(),
            List.of(new LineSegment(0.5, 400, 0.5, 0)),
            List.of(new LineSegment(806.5, 0, 806.5, 400)));
    long startNs = System.nanoTime();
    assertThat(Corridors.count(blockers, wide, WIDTH_M, 1)).isEqualTo(1);
    assertThat((System.nanoTime() - startNs) / 1e9).isLessThan(20);
  }

  private static List<Blocker> blockers(Random random) {
    return IntStream.range(0, 20)
        .mapToObj(
            i -> {
              double leftM = random.nextInt(85) / 10.0;
              double bottomM = random.nextInt(50) / 10.0;
              double alongM = (4 + random.nextInt(16)) / 10.0;
              double upM = (3 + random.nextInt(9)) / 10.0;
              return block(
                  leftM, bottomM, Math.min(ALONG_M, leftM + alongM), Math.min(UP_M, bottomM + upM));
            })
        .toList();
  }

  private static Blocker block(double leftM, double bottomM, double rightM, double topM) {
    return new Blocker(new Envelope(leftM, rightM, bottomM, topM), Optional.empty());
  }

  /** The places of a wheel's middle, in one piece from the lower edge to the upper one. */
  private static boolean wheelRolls(List<Blocker> blockers) {
    double halfM = WIDTH_M / 2;
    List<Geometry> grown =
        blockers.stream().map(b -> SHAPES.toGeometry(b.box()).buffer(halfM - 1e-4, 64)).toList();
    Geometry middles =
        SHAPES
            .toGeometry(new Envelope(halfM, ALONG_M - halfM, 0, UP_M))
            .difference(UnaryUnionOp.union(grown));
    return IntStream.range(0, middles.getNumGeometries())
        .mapToObj(middles::getGeometryN)
        .map(Geometry::getEnvelopeInternal)
        .anyMatch(piece -> piece.getMinY() < 1e-9 && piece.getMaxY() > UP_M - 1e-9);
  }
}
