package clampwise.facts.layout;

import clampwise.calc.Outcome;
import clampwise.calc.en.EnTables;
import clampwise.calc.en.RoofWind;
import clampwise.calc.en.RoofZone;
import clampwise.calc.en.ZonePressure;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * One map of the wind zones of EN 1991-1-4, which change with the direction of the wind: at each
 * place the zone with the most suction over all four directions, by the coefficient for 1 m².
 */
final class EnZones {

  private static final double AREA_M2 = 1;

  private final EnPlane plane;
  private final Geometry outline;

  EnZones(EnPlane plane, Polygon outline) {
    this.plane = plane;
    this.outline = outline;
  }

  /** Zones of one name and suction. */
  private record Key(double suction, String name) implements Comparable<Key> {

    @Override
    public int compareTo(Key other) {
      return Comparator.comparingDouble(Key::suction).thenComparing(Key::name).compare(this, other);
    }
  }

  /** The zones, or why the tables do not cover the plane. */
  Outcome<List<ZoneArea>> draw(EnTables tables) {
    return RoofWind.of(tables, plane.roof(), 1, AREA_M2, Work.unread())
        .then(wind -> new Outcome.Result<>(areas(layers(wind))));
  }

  /** The more severe before the milder. */
  private Map<Key, Geometry> layers(RoofWind wind) {
    Map<Key, Geometry> layers = new TreeMap<>();
    for (ZonePressure each : wind.zones()) {
      layers.merge(
          new Key(each.suctionPa(), each.zone().name()),
          rectangle(each.zone()),
          PlanDrawing::either);
    }
    return layers;
  }

  private List<ZoneArea> areas(Map<Key, Geometry> layers) {
    List<ZoneArea> areas = new ArrayList<>();
    Geometry free = outline;
    int severity = layers.size();
    for (Map.Entry<Key, Geometry> layer : layers.entrySet()) {
      Geometry own = ZoneMap.tidy(PlanDrawing.both(layer.getValue(), free));
      free = PlanDrawing.without(free, layer.getValue());
      if (!own.isEmpty()) {
        areas.add(new ZoneArea(layer.getKey().name(), severity, own, "figure " + plane.figure()));
      }
      severity--;
    }
    return List.copyOf(areas);
  }

  private Polygon rectangle(RoofZone zone) {
    return PlaneAxes.rectangle(
        plane.leftM() + zone.along().fromM(),
        plane.bottomM() + zone.up().fromM(),
        plane.leftM() + zone.along().toM(),
        plane.bottomM() + zone.up().toM());
  }
}
