package clampwise.facts.loads;

import clampwise.calc.Interval;
import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.en.EnTables;
import clampwise.calc.en.InternalPressure;
import clampwise.calc.en.PeakPressure;
import clampwise.calc.en.RoofWind;
import clampwise.calc.en.RoofWind.Extremes;
import clampwise.calc.en.ZoneCoefficients;
import clampwise.calc.en.ZonePressure;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.Pressures;
import clampwise.facts.layout.EnPlane;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.ZoneArea;
import clampwise.facts.layout.ZoneLookup;
import clampwise.job.Building;
import clampwise.job.Building.Enclosure;
import clampwise.job.Choice;
import clampwise.job.Loads;
import clampwise.job.Quantity.Speed;
import clampwise.job.Site;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Wind on a field after EN 1991-1-4: external coefficients of the roof's zones, the worst of four
 * wind directions for uplift and for pressure. The standard has no rule for modules parallel to a
 * roof; taking the roof's coefficients as net ones of the module is a documented assumption. A
 * module's own area is its loaded area.
 */
final class EurocodeWind implements FieldWind {

  /** A module that only touches a zone does not lie in it. */
  private static final double TOUCH_M = 1e-6;

  private static final double NO_ARRAY_EDGES = 1;

  private final FieldSite asked;
  private final EnTables tables;
  private final EnPlane plane;
  private final ZoneLookup zones;
  private final Map<Double, RoofWind> byArea = new HashMap<>();
  private final Map<Extremes, Integer> spots = new HashMap<>();
  private final List<Extremes> extremes = new ArrayList<>();

  private EurocodeWind(FieldSite asked, EnTables tables, EnPlane plane) {
    this.asked = asked;
    this.tables = tables;
    this.plane = plane;
    this.zones = asked.onPlane().zones();
  }

  /** Wind on a field, or what is missing. */
  static Outcome<FieldWind> of(FieldSite asked) {
    if (asked.site(Site::windSpeed).isEmpty()) {
      return new NotApplicable<>(asked.missing("the wind speed of the site", "site", "wind-speed"));
    }
    if (asked.site(Site::terrain).isEmpty()) {
      return new NotApplicable<>(
          asked.missing("the terrain category of the site", "site", "terrain"));
    }
    if (asked.plane().zonesUnknown().isPresent()) {
      return new NotApplicable<>(asked.plane().zonesUnknown().get());
    }
    Optional<String> lost = lost(asked);
    if (lost.isPresent()) {
      return new NotApplicable<>(lost.get());
    }
    EnTables.Reading reading =
        asked
            .wind(Loads.WindReading::disputedRows)
            .map(chosen -> EnTables.Reading.valueOf(chosen.value().name()))
            .orElse(EnTables.Reading.SEVERE);
    EnTables tables = asked.layout().catalogue().codes().windOfEn(reading);
    return EnPlane.of(asked.roof(), asked.plane().outline(), tables)
        .then(plane -> new Result<>(new EurocodeWind(asked, tables, plane)));
  }

  private static Optional<String> lost(FieldSite asked) {
    return asked
        .lost("the orography factor of the site", "site", "topographic-factor")
        .or(() -> asked.lost("a choice for the wind", "loads", "wind"));
  }

  @Override
  public Place place(PlacedModule module) {
    double areaM2 = module.alongM() * module.upM();
    Optional<Extremes> worst = wind(areaM2).on(along(module), up(module));
    List<ZoneArea> touched = zones.of(module);
    return worst.isEmpty() || touched.isEmpty()
        ? new Place("", areaM2, NO_ARRAY_EDGES)
        : new Place(touched.get(0).name(), areaM2, NO_ARRAY_EDGES, spot(worst.get()));
  }

  /** Pressures here are for one pascal of peak pressure: only the zones matter. */
  private RoofWind wind(double areaM2) {
    return byArea.computeIfAbsent(
        areaM2,
        area -> RoofWind.of(tables, plane.roof(), 1, area, Work.unread()).result().orElseThrow());
  }

  private int spot(Extremes worst) {
    return spots.computeIfAbsent(
        worst,
        key -> {
          extremes.add(key);
          return extremes.size() - 1;
        });
  }

  private Interval along(PlacedModule module) {
    return new Interval(
        module.leftM() - plane.leftM() + TOUCH_M, module.rightM() - plane.leftM() - TOUCH_M);
  }

  private Interval up(PlacedModule module) {
    return new Interval(
        module.bottomM() - plane.bottomM() + TOUCH_M, module.topM() - plane.bottomM() - TOUCH_M);
  }

  @Override
  public Outcome<Pressures> on(Place place, Work work) {
    if (place.zone().isEmpty()) {
      return new NotApplicable<>("it lies in no wind zone of its plane");
    }
    return peak(work).then(peak -> new Result<>(pressures(place, peak.peakPa(), work)));
  }

  private Outcome<PeakPressure> peak(Work work) {
    return PeakPressure.of(
        tables,
        Choice.word(asked.site(Site::terrain).orElseThrow().value()),
        asked.site(Site::windSpeed).map(Speed::mPerS).orElseThrow(),
        plane.referenceM(),
        new PeakPressure.Site(EurocodeAnnex.wind(asked, work), work));
  }

  private Pressures pressures(Place place, double peakPa, Work work) {
    Extremes worst = extremes.get(place.spot());
    ZoneCoefficients coefficients = new ZoneCoefficients(tables, plane.roof(), place.areaM2());
    zone("uplift", worst.up(), place, work);
    double awayPa = coefficients.suctionPa(worst.up().zone(), peakPa, work);
    zone("pressure", worst.down(), place, work);
    double towardPa = coefficients.pressurePa(worst.down().zone(), peakPa, work);
    return new Pressures(towardPa, awayPa);
  }

  /**
   * With internal pressure, on the area that the sheet spans; of the zones that share a name the
   * one with the most suction.
   */
  @Override
  public Outcome<Pressures> bare(String zone, double spanM, double widthM, Work work) {
    if (hasDominantOpening()) {
      return new NotApplicable<>(
          "internal pressure of buildings with a dominant opening (EN 1991-1-4) is not part of this"
              + " version");
    }
    double areaM2 = spanM * widthM;
    Optional<ZonePressure> worst =
        wind(areaM2).zones().stream()
            .filter(each -> each.zone().name().equals(zone))
            .min(Comparator.comparingDouble(ZonePressure::suctionPa));
    return worst.isEmpty()
        ? new NotApplicable<>("a clip lies in no wind zone of its plane")
        : peak(work).then(peak -> new Result<>(bare(worst.get(), areaM2, peak.peakPa(), work)));
  }

  private boolean hasDominantOpening() {
    return asked
        .job()
        .building()
        .flatMap(Building::enclosure)
        .filter(written -> written.value() != Enclosure.ENCLOSED)
        .isPresent();
  }

  private Pressures bare(ZonePressure worst, double areaM2, double peakPa, Work work) {
    ZoneCoefficients coefficients = new ZoneCoefficients(tables, plane.roof(), areaM2);
    double awayPa = coefficients.suctionPa(worst.zone(), peakPa, work);
    double towardPa = coefficients.pressurePa(worst.zone(), peakPa, work);
    return new Pressures(
        InternalPressure.towardPa(tables, towardPa, peakPa, work),
        InternalPressure.awayPa(tables, awayPa, peakPa, work));
  }

  private static void zone(String pull, ZonePressure worst, Place place, Work work) {
    String wind = worst.zone().direction().name().toLowerCase(Locale.ROOT);
    work.write(
        Line.given(
            Term.area("A", "loaded area, the module's own", place.areaM2()),
            Source.of("en-1991-1-4", "7.2.1 and figures 7.6 to 7.8", "from a library"),
            "most "
                + pull
                + " in zone "
                + worst.zone().name()
                + ", wind "
                + wind.replace('_', ' ')));
  }
}
