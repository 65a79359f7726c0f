package clampwise.facts.loads;

import clampwise.calc.combination.Actions;
import clampwise.calc.combination.Combination;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.ZoneKeys;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Claims;
import clampwise.job.Claims.Level;
import clampwise.job.Named;
import clampwise.job.Quantity.Pressure;
import clampwise.job.Site.LoadCode;
import clampwise.source.Span;
import clampwise.units.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Holds the wind pressures that the drawings state against those on the modules of a field. */
final class PressureClaims {

  private static final Subject STATED = Subject.of("claims", "pressures");

  private final ClaimedLoads asked;
  private final Level level;
  private final double factor;

  private PressureClaims(ClaimedLoads asked, Level level) {
    this.asked = asked;
    this.level = level;
    this.factor = factor(asked, level);
  }

  static void ask(ClaimedLoads asked) {
    Named<Claims.ZonePressures> stated = asked.claims().pressures();
    Optional<Level> level = asked.claims().pressuresAre().map(Choice::value);
    if (stated.isEmpty()) {
      return;
    }
    Span at = stated.all().iterator().next().name().at();
    if (asked.loads().windUnknown().isPresent()) {
      asked.missing(PressureClaim.class, STATED, asked.loads().windUnknown().get(), at);
    } else if (level.isEmpty()) {
      String reason =
          asked
              .site()
              .missing(
                  "whether the stated pressures are of strength or service level",
                  "claims",
                  "pressures-are");
      asked.missing(PressureClaim.class, STATED, reason, at);
    } else {
      new PressureClaims(asked, level.get()).askZones();
    }
  }

  /** From the level at which the standard computes wind to the stated one. */
  private static double factor(ClaimedLoads asked, Level level) {
    Standard standard = asked.loads().standard();
    boolean en = asked.site().code().filter(LoadCode.EN_1991::equals).isPresent();
    if (level == Level.SERVICE) {
      return mostWind(standard.service());
    }
    return en ? mostWind(standard.combinations()) : 1;
  }

  private static double mostWind(List<Combination> combinations) {
    return combinations.stream().mapToDouble(each -> each.factors().wind()).max().orElse(1);
  }

  /** The modules of a zone that take most uplift and most pressure. */
  private record Worst(PlacedModule up, PlacedModule down) {}

  private void askZones() {
    Map<String, Worst> worst = new TreeMap<>();
    for (PlacedModule module : asked.site().field().modules()) {
      worst.merge(asked.loads().of(module).place().zone(), new Worst(module, module), this::worse);
    }
    worst.forEach(
        (zone, modules) ->
            ZoneKeys.find(asked.claims().pressures(), zone)
                .ifPresent(stated -> ask(zone, stated, modules)));
  }

  private Worst worse(Worst one, Worst other) {
    return new Worst(
        upPa(other.up) > upPa(one.up) ? other.up : one.up,
        downPa(other.down) > downPa(one.down) ? other.down : one.down);
  }

  private void ask(String zone, Claims.ZonePressures stated, Worst worst) {
    stated.up().ifPresent(pa -> add(zone, "uplift", pa, worst.up, this::upPa));
    stated.down().ifPresent(pa -> add(zone, "pressure", pa, worst.down, this::downPa));
  }

  private void add(
      String zone,
      String direction,
      Pressure stated,
      PlacedModule module,
      ToDoubleFunction<PlacedModule> of) {
    double computedPa = of.applyAsDouble(module);
    String step =
        stated.unit().equals(Units.PSF) ? "pressure-claim-step-psf" : "pressure-claim-step";
    double stepPa = asked.site().limits().get(step).si();
    Subject cause = STATED.part("zone " + key(zone)).part(direction);
    asked
        .answers()
        .add(
            new PressureClaim(
                asked.subject(STATED.part("zone " + zone).part(direction)),
                cause,
                stated.at(),
                stated.unit(),
                asked.field(),
                zone,
                direction,
                Choice.word(level),
                module.name(),
                ClaimedLoads.exact(stated.pa()),
                ClaimedLoads.exact(computedPa),
                asked.least(computedPa, stepPa),
                ClaimedLoads.exact(minimumPa()),
                asked.most(computedPa, stepPa)));
  }

  /** The name under which the drawings state a zone. */
  private String key(String zone) {
    return ZoneKeys.keys(zone)
        .filter(asked.claims().pressures().names()::contains)
        .findFirst()
        .orElse(zone);
  }

  private double minimumPa() {
    return asked
        .loads()
        .standard()
        .wind()
        .result()
        .flatMap(FieldWind::parallel)
        .map(method -> method.leastPa() * factor)
        .orElse(0.0);
  }

  private double upPa(PlacedModule module) {
    return -factor * wind(module).windUp().normal();
  }

  private double downPa(PlacedModule module) {
    return factor * wind(module).windDown().normal();
  }

  private Actions wind(PlacedModule module) {
    return asked.loads().of(module).actions();
  }
}
