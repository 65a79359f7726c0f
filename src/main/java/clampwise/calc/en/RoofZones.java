package clampwise.calc.en;

import clampwise.calc.Interval;
import clampwise.calc.Snap;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Zones F to J of a plane for each wind direction, EN 1991-1-4 figures 7.6 to 7.9. */
public final class RoofZones {

  private final EnTables tables;
  private final EnRoof roof;

  private RoofZones(EnTables tables, EnRoof roof) {
    this.tables = tables;
    this.roof = roof;
  }

  /**
   * Zones of a plane (EN 1991-1-4, figures 7.6 to 7.9; from libraries, one layout read in a worked
   * calculation): e = min(b, 2 h); corners F of e/4 by e/10, strip G, then H, J behind the ridge
   * and I. Roofs of less than 5 degrees are flat. Valid for rectangular plans.
   *
   * @param tables tables of EN 1991-1-4
   * @param roof the plane
   * @return its zones in the plane's axes, four wind directions
   */
  public static List<RoofZone> of(EnTables tables, EnRoof roof) {
    RoofZones zones = new RoofZones(tables, roof);
    return Arrays.stream(WindDirection.values())
        .flatMap(direction -> zones.of(direction).stream())
        .toList();
  }

  /** The shape whose zones and coefficients hold: flat below the least pitch. */
  static EnRoof.Shape shape(EnTables tables, EnRoof roof) {
    double leastRad = tables.row("flat-pitch").number("below");
    return Math.abs(roof.pitchRad()) < leastRad - 1e-9 ? EnRoof.Shape.FLAT : roof.shape();
  }

  private List<RoofZone> of(WindDirection direction) {
    List<RoofZone> zones = new ArrayList<>();
    for (Patch patch : patches(direction)) {
      RoofZone zone = onPlane(direction, patch);
      if (zone.along().lengthM() > 0 && zone.up().lengthM() > 0) {
        zones.add(zone);
      }
    }
    return zones;
  }

  private List<Patch> patches(WindDirection direction) {
    boolean isAlong = direction.isAlongEave();
    double acrossWindM = isAlong ? roof.acrossM() : roof.alongM();
    WindwardLayout layout =
        new WindwardLayout(
            acrossWindM,
            isAlong ? roof.alongM() : roof.acrossM(),
            ZoneSizes.of(tables, acrossWindM, roof.heightM(), new Work(Measure.METRIC)));
    return switch (shape(tables, roof)) {
      case FLAT -> layout.open("F", "F");
      case MONOPITCH -> isAlong ? layout.open("F-low", "F-up") : layout.toTheEnd();
      case DUOPITCH -> isAlong ? layout.open("F", "F") : layout.overRidge(ridgeM(direction));
    };
  }

  private double ridgeM(WindDirection direction) {
    return direction == WindDirection.UP_THE_SLOPE ? roof.depthM() : roof.acrossM() - roof.depthM();
  }

  /** Turns a patch from wind axes into the plane's and cuts it at the plane's end. */
  private RoofZone onPlane(WindDirection direction, Patch patch) {
    Interval along =
        switch (direction) {
          case UP_THE_SLOPE, DOWN_THE_SLOPE -> patch.across();
          case FROM_THE_LEFT -> patch.downwind();
          case FROM_THE_RIGHT -> mirrored(patch.downwind(), roof.alongM());
        };
    Interval plan =
        switch (direction) {
          case FROM_THE_LEFT, FROM_THE_RIGHT -> patch.across();
          case UP_THE_SLOPE -> patch.downwind();
          case DOWN_THE_SLOPE -> mirrored(patch.downwind(), roof.acrossM());
        };
    Interval cut = new Interval(plan.fromM(), Math.min(plan.toM(), roof.depthM()));
    boolean falls = roof.pitchRad() < 0 && roof.shape() == EnRoof.Shape.DUOPITCH;
    return falls
        ? new RoofZone(
            direction.reversed(), patch.zone(), along, slope(mirrored(cut, roof.depthM())))
        : new RoofZone(direction, patch.zone(), along, slope(cut));
  }

  private Interval slope(Interval plan) {
    double cosine = Math.cos(roof.pitchRad());
    return new Interval(Snap.m(plan.fromM() / cosine), Snap.m(plan.toM() / cosine));
  }

  private static Interval mirrored(Interval interval, double lengthM) {
    return new Interval(lengthM - interval.toM(), lengthM - interval.fromM());
  }

  /** A rectangle in wind axes: downwind from the windward edge, across from one side. */
  record Patch(String zone, Interval downwind, Interval across) {}
}
