package clampwise.facts.bonding;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.Bonding;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Asks of each island of frames whether it reaches ground, and of each field whether any does. */
final class GroundPaths {

  private static final int AT_LEAST = 1;

  private final Answers answers;
  private final BondingPlaces places;
  private final Frames frames;
  private final List<Island> islands;
  private final Healing healing;
  private final Unread unread;
  private final ShortTies shorts;
  private final Set<String> groundedFields;
  private final Map<String, List<Island>> byField = new HashMap<>();

  private GroundPaths(BondGraph graph, Bonding bonding, Unread unread, Answers answers) {
    this.answers = answers;
    this.unread = unread;
    this.places = new BondingPlaces(bonding);
    this.frames = graph.frames();
    this.islands = graph.islands();
    this.shorts = ShortTies.of(graph);
    this.healing = new Healing(frames, islands);
    this.groundedFields =
        islands.stream()
            .filter(Island::isGrounded)
            .flatMap(island -> island.fields().stream())
            .collect(Collectors.toSet());
    islands.forEach(
        island ->
            island
                .fields()
                .forEach(f -> byField.computeIfAbsent(f, k -> new ArrayList<>()).add(island)));
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Bonding> bonding = layout.job().bonding();
    if (bonding.isEmpty()) {
      Unsaid.tell(GroundPath.class, layout, answers);
      Unsaid.tell(FieldGround.class, layout, answers);
      Unsaid.tell(ModuleRemoval.class, layout, answers);
      return;
    }
    Optional<String> unreadable = Unread.all(layout);
    if (unreadable.isPresent()) {
      missing(layout, unreadable.get(), answers);
      return;
    }
    Unread unread = Unread.of(layout, bonding.get());
    BondGraph graph = BondGraph.of(layout, bonding.get());
    GroundPaths paths = new GroundPaths(graph, bonding.get(), unread, answers);
    paths.judgeIslands();
    layout.fields().stream().filter(paths::isJudged).forEach(paths::judge);
    paths.judgeRemovals(graph, bonding.get());
  }

  /** With all in place that the islands without ground are given, so that no pass is left. */
  private void judgeRemovals(BondGraph graph, Bonding bonding) {
    List<Island> cut =
        islands.stream()
            .filter(island -> !island.isGrounded() && isJudged(island))
            .filter(island -> unread.beyond(island).isEmpty())
            .toList();
    BondGraph healed = cut.isEmpty() ? graph : healing.healed(graph, cut);
    Removals.judge(healed, !cut.isEmpty(), bonding, unread, answers);
  }

  private static void missing(Layout layout, String reason, Answers answers) {
    Subject bonding = Subject.of("bonding");
    Span at = layout.job().at("bonding");
    answers.missing(GroundPath.class, bonding, reason, at);
    answers.missing(FieldGround.class, bonding, reason, at);
    answers.missing(ModuleRemoval.class, bonding, reason, at);
  }

  /** Islands of fields that are not grounded at all are judged with the field. */
  private boolean isJudged(Island island) {
    return island.fields().stream().anyMatch(groundedFields::contains);
  }

  private void judgeIslands() {
    Map<String, List<Island>> known =
        islands.stream()
            .filter(this::isJudged)
            .filter(this::isKnown)
            .collect(
                Collectors.groupingBy(
                    island -> island.first().field(), LinkedHashMap::new, Collectors.toList()));
    known.forEach((field, own) -> judge(frames.field(field).orElseThrow(), own));
  }

  /** Whether the ground path of an island can be judged; what is missing is told if not. */
  private boolean isKnown(Island island) {
    Optional<String> beyond = unread.beyond(island);
    if (beyond.isEmpty() && island.isGrounded() && !island.isSure()) {
      beyond = Optional.of(reason(island));
    }
    Span at = places.jumpers(frames.field(island.first().field()).orElseThrow());
    beyond.ifPresent(why -> answers.missing(GroundPath.class, subject(island), why, at));
    return beyond.isEmpty();
  }

  private void judge(FieldLayout field, List<Island> own) {
    List<Island> without = own.stream().filter(island -> !island.isGrounded()).toList();
    CutOff cutOff = new CutOff(field, without, healing);
    own.forEach(island -> answers.add(fact(field, island, cutOff)));
  }

  private GroundPath fact(FieldLayout field, Island island, CutOff cutOff) {
    return new GroundPath(
        subject(island),
        places.jumpers(field),
        Unit.NUMBER,
        field.name(),
        island.first().name(),
        island.frames().size(),
        island.lugs(),
        AT_LEAST,
        cutOff.frames(),
        cutOff.where(),
        shorts.at(island),
        cutOff.remedy());
  }

  private static Subject subject(Island island) {
    return Subjects.module(island.first()).part("frames bonded to it");
  }

  private static String reason(Island island) {
    return String.join("; ", island.doubts());
  }

  /** A field whose frames all hang on islands judged with another field is judged with those. */
  private boolean isJudged(FieldLayout field) {
    List<Island> own = byField.getOrDefault(field.name(), List.of());
    return groundedFields.contains(field.name())
        || (!own.isEmpty() && own.stream().noneMatch(this::isJudged));
  }

  private void judge(FieldLayout field) {
    List<Island> own = byField.getOrDefault(field.name(), List.of());
    Set<String> sure =
        own.stream().flatMap(island -> island.sure().stream()).collect(Collectors.toSet());
    int grounded =
        (int) field.modules().stream().map(PlacedModule::name).filter(sure::contains).count();
    Subject subject = Subjects.field(field.name()).part("ground");
    Optional<String> beyond =
        own.stream().flatMap(island -> unread.beyond(island).stream()).findFirst();
    if (grounded == 0 && beyond.isPresent()) {
      answers.missing(FieldGround.class, subject, beyond.get(), places.lugs(field));
    } else if (grounded == 0 && groundedFields.contains(field.name())) {
      String reason =
          own.stream()
              .filter(Island::isGrounded)
              .map(GroundPaths::reason)
              .distinct()
              .collect(Collectors.joining("; "));
      answers.missing(FieldGround.class, subject, reason, places.lugs(field));
    } else {
      answers.add(
          new FieldGround(
              subject,
              places.lugs(field),
              Unit.NUMBER,
              field.name(),
              field.modules().get(0).name(),
              field.modules().size(),
              grounded,
              AT_LEAST));
    }
  }
}
