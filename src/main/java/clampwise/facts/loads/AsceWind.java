package clampwise.facts.loads;

import clampwise.calc.AsceEdition;
import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.ZoneWidth.Roof;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.EffectiveArea;
import clampwise.calc.wind.Enclosure;
import clampwise.calc.wind.Exposure;
import clampwise.calc.wind.PanelPressure;
import clampwise.calc.wind.PanelPressure.Panel;
import clampwise.calc.wind.Patch;
import clampwise.calc.wind.Pressures;
import clampwise.calc.wind.Velocity;
import clampwise.calc.wind.VelocityPressure;
import clampwise.calc.wind.WindBuilding;
import clampwise.calc.wind.WindCode;
import clampwise.calc.wind.WindSite;
import clampwise.calc.wind.ZonePressure;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.ZoneArea;
import clampwise.facts.layout.ZoneLookup;
import clampwise.facts.roof.TopHeight;
import clampwise.job.Building;
import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Speed;
import clampwise.job.Site;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Wind on a field after ASCE 7-16 and 7-22: panels parallel to the roof where all conditions of the
 * method hold, else components and cladding on the whole module. A module's own area is its
 * effective wind area; one astride two zones takes the more severe.
 */
final class AsceWind implements FieldWind {

  private final WindCode code;
  private final WindSite site;
  private final WindBuilding building;
  private final ArraySetup setup;
  private final ZoneLookup zones;
  private final PanelMethod method;
  private final Map<Measure, Outcome<Velocity>> velocities = new ConcurrentHashMap<>();

  private AsceWind(FieldSite asked, WindCode code, WindSite site, Roof roof) {
    this.code = code;
    this.site = site;
    this.building = building(asked, roof);
    this.setup = ArraySetup.of(asked, code, roof.heightM());
    this.zones = asked.onPlane().zones();
    this.method = new PanelMethod(code, building.enclosure(), setup, asked.measure());
  }

  /** Wind on a field, or what is missing. */
  static Outcome<FieldWind> of(FieldSite asked, AsceEdition edition) {
    Outcome<Roof> roof = asked.roof().described();
    return missing(asked)
        .<Outcome<FieldWind>>map(NotApplicable::new)
        .orElseGet(
            () ->
                roof.then(
                    known ->
                        new Result<>(
                            new AsceWind(asked, code(asked, edition), site(asked), known))));
  }

  private static Optional<String> missing(FieldSite asked) {
    if (asked.site(Site::windSpeed).isEmpty()) {
      return Optional.of(asked.missing("the wind speed of the site", "site", "wind-speed"));
    }
    if (asked.site(Site::exposure).isEmpty()) {
      return Optional.of(asked.missing("the exposure category of the site", "site", "exposure"));
    }
    if (TopHeight.of(asked.field()).isEmpty()) {
      return Optional.of(TopHeight.unknown(asked.field(), asked.plane().reading().unreadable()));
    }
    return asked.plane().outline().isEmpty()
        ? Optional.of(asked.plane().reading().outlineUnknown())
        : asked.plane().zonesUnknown().or(() -> lost(asked));
  }

  private static Optional<String> lost(FieldSite asked) {
    return asked
        .lost("the topographic factor of the site", "site", "topographic-factor")
        .or(() -> asked.lost("the elevation of the site", "site", "elevation"))
        .or(() -> asked.lost("how the building is enclosed", "building", "enclosure"))
        .or(() -> asked.lost("the height of the parapet", "building", "parapet"))
        .or(() -> asked.lost("a choice for the wind", "loads", "wind"));
  }

  private static WindSite site(FieldSite asked) {
    return new WindSite(
        asked.site(Site::windSpeed).map(Speed::mPerS).orElseThrow(),
        Exposure.valueOf(asked.site(Site::exposure).orElseThrow().value().name()),
        asked.site(Site::topographicFactor).map(Factor::value).orElse(1.0),
        Optional.empty(),
        asked.site(Site::elevation).map(Length::m));
  }

  private static WindCode code(FieldSite asked, AsceEdition edition) {
    WindCode code = asked.layout().catalogue().codes().wind(edition, asked.limits());
    return code.with(new WindReadings(asked, edition).over(code.choices()));
  }

  private static WindBuilding building(FieldSite asked, Roof roof) {
    Optional<Building> written = asked.job().building();
    Enclosure enclosure =
        written
            .flatMap(Building::enclosure)
            .map(given -> Enclosure.valueOf(given.value().name()))
            .orElse(Enclosure.ENCLOSED);
    double parapetM = written.flatMap(Building::parapet).map(Length::m).orElse(0.0);
    return new WindBuilding(roof, enclosure, parapetM);
  }

  @Override
  public Optional<PanelMethod> parallel() {
    return Optional.of(method);
  }

  @Override
  public Place place(PlacedModule module) {
    List<ZoneArea> touched = zones.of(module);
    String zone = touched.isEmpty() ? "" : touched.get(0).name();
    return new Place(zone, module.alongM() * module.upM(), setup.edgeFactor(module));
  }

  @Override
  public Outcome<Pressures> show(PlacedModule module, Work work) {
    setup.showEdgeFactor(module, work);
    return on(place(module), work);
  }

  @Override
  public Outcome<Pressures> on(Place place, Work work) {
    if (place.zone().isEmpty()) {
      return new NotApplicable<>("it lies in no wind zone of its plane");
    }
    Patch patch = new Patch(place.zone(), place.areaM2());
    Panel panel = new Panel(patch, place.edgeFactor(), setup.panel());
    return velocity(work)
        .then(velocity -> PanelPressure.of(code, building, velocity, panel, work))
        .then(load -> new Result<>(load.pressures()));
  }

  @Override
  public Outcome<Pressures> bare(String zone, double spanM, double widthM, Work work) {
    if (zone.isEmpty()) {
      return new NotApplicable<>("a clip lies in no wind zone of its plane");
    }
    Outcome<Velocity> velocity = velocity(work);
    return EffectiveArea.of(code, spanM, widthM, work)
        .then(
            areaM2 ->
                velocity.then(
                    q -> ZonePressure.of(code, building, q, new Patch(zone, areaM2), work)));
  }

  /** The same for all places of the field; worked out again only for its lines. */
  private Outcome<Velocity> velocity(Work work) {
    return work.isRead()
        ? VelocityPressure.of(code, site, building.roof().heightM(), work)
        : velocities.computeIfAbsent(
            work.measure(),
            measure -> VelocityPressure.of(code, site, building.roof().heightM(), work));
  }
}
