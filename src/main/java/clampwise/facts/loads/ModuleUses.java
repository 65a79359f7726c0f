package clampwise.facts.loads;

import clampwise.calc.Snap;
import clampwise.calc.combination.Combination;
import clampwise.calc.combination.Combined;
import clampwise.catalogue.Limit;
import clampwise.facts.Answers;
import clampwise.facts.Subjects;
import clampwise.facts.layout.ClampZones;
import clampwise.facts.layout.Grip;
import clampwise.facts.layout.ModuleEdge;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.ModuleType;
import clampwise.job.ModuleType.ClampZone;
import clampwise.job.ModuleType.LoadBasis;
import clampwise.job.Quantity.Pressure;
import clampwise.job.Unreadable;
import clampwise.units.QuantityPrint;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Holds the net pressure on each module of a field against the design rating of the row of its
 * clamp-zone table that holds all its clamps.
 */
final class ModuleUses {

  private static final String NO_ROW =
      "no row of its clamp-zone table holds a clamp on each half of its edges (clamp-zones)";

  private final FieldLoads loads;
  private final FieldSite site;
  private final Answers answers;
  private final double testOverDesign;
  private final Limit noteAbove;
  private final Map<String, List<Grip>> grips = new HashMap<>();
  private final Map<ModuleLoad, Extremes> extremes = new IdentityHashMap<>();

  private record Extremes(Optional<Combined> up, Optional<Combined> down) {}

  /** A pressure held against a rating. */
  private record Case(String direction, Combination combination, double demandPa, Pressure rated) {
    private Case {
      demandPa = Math.max(0, demandPa);
    }
  }

  private ModuleUses(FieldLoads loads, Answers answers) {
    this.loads = loads;
    this.site = loads.site();
    this.answers = answers;
    this.testOverDesign = site.limits().get("test-over-design-load").si();
    this.noteAbove = site.limits().get("utilisation-note");
  }

  static void ask(FieldLoads loads, Answers answers) {
    ModuleUses uses = new ModuleUses(loads, answers);
    uses.missingActions();
    uses.collect();
    uses.site.field().modules().forEach(uses::ask);
  }

  private void missingActions() {
    loads.windUnknown().ifPresent(reason -> missing(site.subject().part("up"), reason));
    loads
        .windUnknown()
        .or(loads::snowUnknown)
        .ifPresent(reason -> missing(site.subject().part("down"), reason));
  }

  private void collect() {
    for (ModuleEdge edge : site.field().edges()) {
      List<Grip> own = grips.computeIfAbsent(edge.module().name(), name -> new ArrayList<>(4));
      edge.attachments().stream()
          .flatMap(attachment -> attachment.grips().stream())
          .filter(grip -> grip.edge() == edge.edge())
          .filter(grip -> grip.module().name().equals(edge.module().name()))
          .forEach(own::add);
    }
  }

  private void ask(PlacedModule module) {
    ModuleType type = module.type();
    List<Grip> own = grips.getOrDefault(module.name(), List.of());
    if (type.loadsAre().isEmpty() || type.clampZones().isEmpty()) {
      missing(site.subject().part("module type " + module.typeName()), unrated(module));
    } else if (own.isEmpty()) {
      missing(Subjects.module(module), module.name() + " is held by no clamp");
    } else {
      answer(module, rows(module, own));
    }
  }

  private String unrated(PlacedModule module) {
    String name = "module " + module.typeName();
    Unreadable unreadable = site.job().unreadable();
    return module.type().clampZones().isEmpty()
        ? unreadable.unwritten(
            name + " has no clamp-zone table",
            "the clamp-zone table of " + name,
            "modules",
            module.typeName(),
            "clamp-zones")
        : unreadable.unwritten(
            name + " does not say whether its loads are design or test loads",
            "whether the loads of " + name + " are design or test loads",
            "modules",
            module.typeName(),
            "loads-are");
  }

  /** Rows that hold a clamp on each half of each held edge; more clamps beside it do no harm. */
  private static List<ClampZone> rows(PlacedModule module, List<Grip> grips) {
    Collection<List<Grip>> halves =
        grips.stream()
            .collect(Collectors.groupingBy(grip -> List.of(grip.edge(), grip.half())))
            .values();
    return ClampZones.of(module.type(), module.clampedSide()).rows().stream()
        .filter(row -> halves.stream().allMatch(half -> half.stream().anyMatch(in(row))))
        .toList();
  }

  private static Predicate<Grip> in(ClampZone row) {
    return grip -> ClampZones.holds(row, Snap.m(grip.fromCornerM()));
  }

  private void answer(PlacedModule module, List<ClampZone> rows) {
    if (rows.isEmpty()) {
      missing(Subjects.module(module), NO_ROW);
      return;
    }
    Extremes worst = extremes.computeIfAbsent(loads.of(module), this::extremes);
    Optional<Case> up =
        worst.up.flatMap(
            most ->
                rated(rows, ClampZone::up)
                    .map(p -> new Case("up", most.combination(), -most.normalUp(), p)));
    Optional<Case> down =
        worst.down.flatMap(
            most ->
                rated(rows, ClampZone::down)
                    .map(p -> new Case("down", most.combination(), most.normalDown(), p)));
    if (up.isPresent() || down.isPresent()) {
      answers.add(fact(module, governing(up, down)));
    } else if (rated(rows, ClampZone::up).or(() -> rated(rows, ClampZone::down)).isEmpty()) {
      missing(Subjects.module(module), module.typeName() + " has no rating for these clamps");
    }
  }

  private static Case governing(Optional<Case> up, Optional<Case> down) {
    if (up.isEmpty() || down.isEmpty()) {
      return up.or(() -> down).orElseThrow();
    }
    double upShare = up.get().demandPa / up.get().rated.pa();
    return upShare >= down.get().demandPa / down.get().rated.pa() ? up.get() : down.get();
  }

  private Extremes extremes(ModuleLoad load) {
    return new Extremes(
        effects(load, true).min(Comparator.comparingDouble(Combined::normalUp)),
        effects(load, false).max(Comparator.comparingDouble(Combined::normalDown)));
  }

  private Stream<Combined> effects(ModuleLoad load, boolean up) {
    return loads.standard().service().stream()
        .filter(combination -> loads.isKnown(combination, up))
        .map(combination -> combination.of(load.actions()));
  }

  private static Optional<Pressure> rated(
      List<ClampZone> rows, Function<ClampZone, Optional<Pressure>> of) {
    return rows.stream()
        .flatMap(row -> of.apply(row).stream())
        .reduce((a, b) -> b.pa() > a.pa() ? b : a);
  }

  private ModuleUse fact(PlacedModule module, Case asked) {
    boolean test =
        module.type().loadsAre().filter(are -> are.value() == LoadBasis.TEST).isPresent();
    double ratedPa = asked.rated.pa() / (test ? testOverDesign : 1);
    String zone = loads.of(module).place().zone();
    return new ModuleUse(
        Subjects.module(module),
        site.subject().part("module").part("zone " + zone),
        site.field().field().module().at(),
        site.pressureUnit(),
        site.field().name(),
        module.name(),
        module.typeName(),
        Choice.word(module.clampedSide()),
        zone,
        asked.direction,
        asked.combination.name(),
        rounded(asked.demandPa),
        rounded(ratedPa),
        rounded(ratedPa * noteAbove.si()),
        rating(asked.rated, test),
        asked.demandPa > ratedPa ? stronger(asked).text(module) : "",
        Optional.of(
            new ModuleChain(
                loads,
                module,
                asked.combination,
                asked.direction.equals("up"),
                asked.rated.pa(),
                testOverDesign)),
        Optional.empty());
  }

  private String rating(Pressure rated, boolean test) {
    String written = QuantityPrint.text(rated.si(), rated.unit());
    return test
        ? "its test load of " + written + " over " + testOverDesign
        : written + " in its clamp-zone table";
  }

  private StrongerRow stronger(Case asked) {
    return new StrongerRow(site, asked.direction.equals("up"), asked.demandPa, testOverDesign);
  }

  /** So that a pressure of exactly its rating is at its limit. */
  private static double rounded(double pressurePa) {
    return Math.rint(pressurePa * 1e6) / 1e6;
  }

  private void missing(Subject subject, String reason) {
    answers.missing(ModuleUse.class, subject, reason, site.field().field().module().at());
  }
}
