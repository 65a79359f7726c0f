package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Field.DesignLoad;
import clampwise.job.ModuleType;
import clampwise.job.ModuleType.ClampZone;
import clampwise.job.ModuleType.Side;
import clampwise.job.Quantity.Pressure;
import clampwise.source.Span;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Asks of each module type of a field what the side that crosses the seams is rated for. */
final class SideRatings {

  private final FieldCase asked;
  private final PlacedModule module;
  private final ModuleType type;
  private final double testFactor;

  private SideRatings(FieldCase asked, PlacedModule module) {
    this.asked = asked;
    this.module = module;
    this.type = module.type();
    this.testFactor = asked.limits().get("test-over-design-load").si();
  }

  static void ask(FieldCase asked) {
    Map<String, PlacedModule> byType = new LinkedHashMap<>();
    asked.field().modules().forEach(module -> byType.putIfAbsent(module.typeName(), module));
    byType.values().forEach(module -> new SideRatings(asked, module).judge());
  }

  private void judge() {
    if (type.clampZones().isEmpty()) {
      String reason = ZoneSeams.noTable(asked, module);
      List.of(RatedSide.class, RatingUsed.class, SideLoad.class)
          .forEach(question -> missing(question, reason));
      return;
    }
    asked.add(ratedSide());
    ratingUsed();
    sideLoad();
  }

  private RatedSide ratedSide() {
    return new RatedSide(
        subject(),
        asked.field().field().orientation().at(),
        module.typeName(),
        Choice.word(module.orientation()),
        Choice.word(module.clampedSide()),
        clampedRows().size(),
        1);
  }

  private void ratingUsed() {
    Optional<Choice<Side>> used = asked.field().field().ratingUsed();
    if (used.isEmpty()) {
      String unwritten = field() + " does not say which side's rating is used";
      missing(RatingUsed.class, asked.unwritten(unwritten, "the rating used", "rating-used"));
      return;
    }
    Stream.of(LoadDirection.values()).forEach(direction -> compare(direction, used.get().value()));
  }

  private void compare(LoadDirection direction, Side used) {
    Optional<Pressure> usedLoad = direction.best(UsableZones.ofSide(type, used));
    Optional<Pressure> clampedLoad = direction.best(clampedRows());
    if (usedLoad.isPresent() && clampedLoad.isPresent()) {
      asked.add(fact(direction, usedLoad.get(), clampedLoad.get()));
    } else {
      Side without = usedLoad.isEmpty() ? used : module.clampedSide();
      missing(RatingUsed.class, noLoad(direction, without));
    }
  }

  private RatingUsed fact(LoadDirection direction, Pressure used, Pressure clamped) {
    double factor = RatedLoads.factor(type, testFactor).orElse(1.0);
    Choice<Side> written = asked.field().field().ratingUsed().orElseThrow();
    return new RatingUsed(
        subject().part(direction.word()),
        asked.subject().part("rating-used"),
        written.at(),
        used.unit(),
        module.typeName(),
        direction.word(),
        written.toString(),
        Choice.word(module.clampedSide()),
        used.pa() / factor,
        clamped.pa() / factor);
  }

  private void sideLoad() {
    Optional<DesignLoad> load = asked.field().field().designLoad();
    if (load.isEmpty()) {
      missing(SideLoad.class, noWanted(""));
      return;
    }
    Stream.of(LoadDirection.values()).forEach(direction -> sideLoad(direction, load.get()));
  }

  private void sideLoad(LoadDirection direction, DesignLoad load) {
    Optional<Pressure> wanted = direction.wanted(load);
    Optional<Pressure> rated = direction.best(clampedRows());
    Optional<Double> factor = RatedLoads.factor(type, testFactor);
    if (wanted.isEmpty()) {
      missing(SideLoad.class, noWanted(" " + direction.word()));
    } else if (rated.isEmpty()) {
      missing(SideLoad.class, noLoad(direction, module.clampedSide()));
    } else if (factor.isEmpty()) {
      missing(SideLoad.class, ZoneSeams.noBasis(asked, module));
    } else {
      asked.add(sideLoad(direction, wanted.get(), rated.get().pa() / factor.get()));
    }
  }

  private String noLoad(LoadDirection direction, Side side) {
    String forSide = " for its " + Choice.word(side) + " side";
    String lacks = module.typeName() + " has no load " + direction.word() + forSide;
    return ZoneSeams.ofTable(asked, module, lacks);
  }

  private String noWanted(String direction) {
    String unwritten = field() + " gives no design load" + direction;
    return asked.unwritten(unwritten, "the design load" + direction, "design-load");
  }

  private String field() {
    return "field " + asked.field().name();
  }

  private SideLoad sideLoad(LoadDirection direction, Pressure wanted, double ratedPa) {
    return new SideLoad(
        subject().part(direction.word()),
        wanted.at(),
        wanted.unit(),
        module.typeName(),
        Choice.word(module.clampedSide()),
        direction.word(),
        wanted.pa(),
        ratedPa);
  }

  private List<ClampZone> clampedRows() {
    return UsableZones.ofSide(module);
  }

  private Subject subject() {
    return asked.subject().part("module type " + module.typeName());
  }

  private void missing(Class<? extends Fact> question, String reason) {
    Span at = asked.field().field().module().at();
    asked.missing(question, subject(), reason, at);
  }
}
