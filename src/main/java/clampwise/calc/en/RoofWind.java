package clampwise.calc.en;

import clampwise.calc.Interval;
import clampwise.calc.Outcome;
import clampwise.calc.trail.Work;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Wind on a plane, zone by zone, for one loaded area. EN 1991-1-4 has no rule that is known here
 * for modules parallel to a roof: using the roof's external coefficients for them is an assumption.
 *
 * @param zones all zones with their pressures
 */
public record RoofWind(List<ZonePressure> zones) {

  public RoofWind {
    zones = List.copyOf(zones);
  }

  /**
   * The most severe pressures on a part of the plane.
   *
   * @param up zone and direction with the most suction
   * @param down zone and direction with the most pressure
   */
  public record Extremes(ZonePressure up, ZonePressure down) {}

  /**
   * External pressures of a plane (EN 1991-1-4, tables 7.2, 7.3 and 7.4, from libraries; area rule
   * of figure 7.2): coefficients by pitch, on a straight line between values of the same sign, and
   * by loaded area between 1 and 10 m². Valid for flat roofs, monopitch roofs up to 75 degrees and
   * duopitch roofs from -45 to 75 degrees.
   *
   * @param tables tables of EN 1991-1-4
   * @param roof the plane
   * @param peakPa peak velocity pressure at the roof's reference height [Pa]
   * @param areaM2 loaded area [m²]
   * @param work sets the units; takes no lines, see {@link ZoneCoefficients}
   * @return pressures, or why the tables do not apply
   */
  public static Outcome<RoofWind> of(
      EnTables tables, EnRoof roof, double peakPa, double areaM2, Work work) {
    Optional<String> outside = ZoneCoefficients.outside(tables, roof);
    if (outside.isPresent()) {
      return new Outcome.NotApplicable<>(outside.get());
    }
    ZoneCoefficients coefficients = new ZoneCoefficients(tables, roof, areaM2);
    List<ZonePressure> zones =
        RoofZones.of(tables, roof).stream()
            .map(zone -> coefficients.pressure(zone, peakPa, new Work(work.measure())))
            .toList();
    return new Outcome.Result<>(new RoofWind(zones));
  }

  /** The zone that holds a point, for a wind direction; the more severe one on a border. */
  public Optional<ZonePressure> at(WindDirection direction, double alongM, double upM) {
    return zones.stream()
        .filter(pressure -> pressure.zone().direction() == direction)
        .filter(pressure -> pressure.zone().holds(alongM, upM))
        .min(Comparator.comparingDouble(ZonePressure::suctionPa));
  }

  /** The most severe pressures of all zones that share area with a rectangle of the plane. */
  public Optional<Extremes> on(Interval along, Interval up) {
    List<ZonePressure> touched =
        zones.stream().filter(pressure -> pressure.zone().overlaps(along, up)).toList();
    return touched.stream()
        .min(Comparator.comparingDouble(ZonePressure::suctionPa))
        .map(most -> new Extremes(most, largest(touched)));
  }

  private static ZonePressure largest(List<ZonePressure> zones) {
    return zones.stream().max(Comparator.comparingDouble(ZonePressure::pressurePa)).orElseThrow();
  }
}
