package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.combination.Actions;
import clampwise.calc.combination.Combination;
import clampwise.calc.combination.Effect;
import clampwise.calc.combination.SlopeComponents;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.Pressures;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.ZoneArea;
import clampwise.facts.layout.ZoneLookup;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Loads of the modules of one field. Modules in one place under one snow share theirs. */
final class FieldLoads {

  /** What stands for the zone where the zones of the roof are not known. */
  static final String NO_ZONE = "unknown";

  private final FieldSite site;
  private final Standard standard;
  private final DeadLoad dead;
  private final Map<Key, ModuleLoad> known = new HashMap<>();
  private final ZoneLookup zones;
  private final Map<String, ModuleLoad> modules = new HashMap<>();
  private final Map<Place, Outcome<Pressures>> winds = new HashMap<>();
  private final Map<String, Place> places = new HashMap<>();
  private final Optional<String> windUnknown;

  private record Key(Place place, double snowPa, double deadPa) {}

  private FieldLoads(FieldSite site, Standard standard) {
    this.site = site;
    this.standard = standard;
    this.zones = site.onPlane().zones();
    this.dead = new DeadLoad(site);
    this.windUnknown =
        site.field().modules().stream()
            .reduce(
                reason(standard.wind()),
                (reason, module) -> reason.or(() -> reason(wind(place(module)))),
                (a, b) -> a.or(() -> b));
    site.field().modules().forEach(module -> modules.put(module.name(), load(module)));
  }

  /** Loads of a field, or why not even the dead load is known. */
  static Outcome<FieldLoads> of(FieldSite site) {
    if (site.slopeRad().isEmpty()) {
      return new NotApplicable<>(site.slopeMissing());
    }
    Optional<String> deadUnknown = new DeadLoad(site).unknown();
    if (deadUnknown.isPresent()) {
      return new NotApplicable<>(deadUnknown.get());
    }
    return Standard.of(site).then(standard -> new Result<>(new FieldLoads(site, standard)));
  }

  FieldSite site() {
    return site;
  }

  Standard standard() {
    return standard;
  }

  ModuleLoad of(PlacedModule module) {
    return Objects.requireNonNull(modules.get(module.name()));
  }

  /** Why the wind on the field is not known, if so; the loads then have none. */
  Optional<String> windUnknown() {
    return windUnknown;
  }

  /** Why the snow on the field is not known, if so; the loads then have none. */
  Optional<String> snowUnknown() {
    return reason(standard.snow());
  }

  /** Whether all actions of a combination are known, as far as loads that way ask for them. */
  boolean isKnown(Combination combination, boolean up) {
    boolean wind = windUnknown.isEmpty() || combination.factors().wind() == 0 && !up;
    return wind && (up || snowUnknown().isEmpty());
  }

  private Place place(PlacedModule module) {
    return places.computeIfAbsent(
        module.name(),
        name ->
            standard
                .wind()
                .result()
                .map(wind -> wind.place(module))
                .orElseGet(() -> new Place(zone(module), 0, 1)));
  }

  /** Where a module lies, though its wind is not known. */
  private String zone(PlacedModule module) {
    return zones.of(module).stream().findFirst().map(ZoneArea::name).orElse(NO_ZONE);
  }

  private Outcome<Pressures> wind(Place place) {
    return winds.computeIfAbsent(
        place, key -> standard.wind().then(wind -> wind.on(key, Work.unread(site.measure()))));
  }

  private ModuleLoad load(PlacedModule module) {
    Place place = place(module);
    double snowPa = standard.snow().result().map(snow -> snow.planPa(module)).orElse(0.0);
    return known.computeIfAbsent(
        new Key(place, snowPa, dead.pa(module)),
        key -> ModuleLoad.of(place, actions(key), standard.combinations()));
  }

  private Actions actions(Key key) {
    double slopeRad = site.slopeRad().orElseThrow();
    Effect snow = SlopeComponents.onPlan(key.snowPa, slopeRad);
    Actions still = Actions.of(SlopeComponents.onSlope(key.deadPa, slopeRad)).withSnow(snow);
    Optional<Pressures> wind =
        windUnknown.isPresent() ? Optional.empty() : wind(key.place).result();
    return wind.map(p -> still.withWind(p.towardPa(), p.awayPa())).orElse(still);
  }

  private static Optional<String> reason(Outcome<?> outcome) {
    return outcome instanceof NotApplicable<?> none ? Optional.of(none.reason()) : Optional.empty();
  }
}
