package clampwise.facts.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Areas computed by hand: a plane of 10 by 6 with strips of 1. */
class LayerCutTest {

  private static final Geometry PLANE = PlaneAxes.rectangle(0, 0, 10, 6);

  @Test
  void eachLayerTakesWhatIsLeftOfThoseAboveIt() {
    List<Geometry> taken =
        LayerCut.of(
            PLANE,
            List.of(
                layer(PlaneAxes.rectangle(0, 0, 1, 1)),
                layer(PlaneAxes.rectangle(0, 0, 1, 6)),
                layer(PlaneAxes.rectangle(0, 0, 10, 1)),
                layer(PLANE)));

    assertThat(taken).extracting(Geometry::getArea).containsExactly(1.0, 5.0, 9.0, 45.0);
  }

  @Test
  void cutsOfAnyShapeGoThroughAnOverlay() {
    Geometry triangle =
        PlaneAxes.polygon(new Coordinate(0, 0), new Coordinate(4, 0), new Coordinate(0, 4));

    List<Geometry> taken = LayerCut.of(PLANE, List.of(layer(triangle), layer(PLANE)));

    assertThat(taken).extracting(Geometry::getArea).containsExactly(8.0, 52.0);
  }

  /** A strip round a corner leaves an L, which is one polygon and not two that touch. */
  @Test
  void piecesThatTouchBecomeOne() {
    List<Geometry> taken =
        LayerCut.of(PLANE, List.of(layer(PlaneAxes.rectangle(4, 2, 10, 6)), layer(PLANE)));

    assertThat(taken.get(1).getNumGeometries()).isEqualTo(1);
    assertThat(taken.get(1).getArea()).isEqualTo(36);
  }

  private static ZoneLayer layer(Geometry area) {
    return new ZoneLayer("1", 1, area);
  }
}
