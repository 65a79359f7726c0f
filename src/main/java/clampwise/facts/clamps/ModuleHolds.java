package clampwise.facts.clamps;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.clamps.HeldModule.Hold;
import clampwise.facts.layout.Grip.Edge;
import clampwise.finding.Subject;
import clampwise.job.Count;
import clampwise.source.Span;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Asks of each module how its clamps hold it: how many, on which halves, in the zone, how far in.
 */
final class ModuleHolds {

  private static final List<Class<? extends Fact>> ANSWERS =
      List.of(ClampsOnModule.class, EdgeHold.class, ZoneGrip.class, Overhang.class);
  private static final int HALVES = 2;

  private final FieldCase asked;
  private final ZoneGrips zones;
  private final Overhangs overhangs;

  private ModuleHolds(FieldCase asked) {
    this.asked = asked;
    this.zones = new ZoneGrips(asked);
    this.overhangs = new Overhangs(asked);
  }

  static void ask(FieldCase asked) {
    Optional<String> unknown = asked.field().attachmentsUnknown();
    if (unknown.isPresent()) {
      ANSWERS.forEach(type -> asked.missing(type, asked.subject(), unknown.get(), asked.at()));
    } else {
      ModuleHolds holds = new ModuleHolds(asked);
      HeldModule.of(asked.field()).forEach(holds::judge);
    }
  }

  private void judge(HeldModule held) {
    asked.add(count(held));
    edgeHold(held).ifPresent(asked::add);
    zones.judge(held);
    overhangs.judge(held);
  }

  private ClampsOnModule count(HeldModule held) {
    Optional<Count> stated = held.module().type().clampsAtLeast();
    Limit practice = asked.limits().get("clamps-per-module-least");
    Edge weakest = weakest(held);
    return new ClampsOnModule(
        Subjects.module(held.module()),
        cause(asked),
        at(held, weakest),
        held.module().name(),
        held.grips().size(),
        stated.map(Count::value).orElse((int) practice.si()),
        word(weakest),
        held.on(weakest).size(),
        (int) asked.limits().get("clamps-per-edge-least").si(),
        stated.isPresent() ? Optional.empty() : Optional.of(practice));
  }

  private Span at(HeldModule held, Edge weakest) {
    return Stream.concat(held.on(weakest).stream(), held.grips().stream())
        .map(ModuleHolds::at)
        .findFirst()
        .orElse(asked.scheduleAt());
  }

  private static Edge weakest(HeldModule held) {
    return Stream.of(Edge.values())
        .min(Comparator.comparingInt(edge -> held.on(edge).size()))
        .orElseThrow();
  }

  /** Of the edges with clamps enough, the one whose clamps leave a half free. */
  private Optional<EdgeHold> edgeHold(HeldModule held) {
    return Stream.of(Edge.values())
        .filter(edge -> held.on(edge).size() >= HALVES)
        .min(Comparator.comparingInt(held::halvesHeld))
        .map(edge -> edgeHold(held, edge));
  }

  private EdgeHold edgeHold(HeldModule held, Edge edge) {
    return new EdgeHold(
        Subjects.module(held.module()),
        cause(asked),
        at(held.on(edge).get(0)),
        held.module().name(),
        word(edge),
        held.on(edge).size(),
        held.halvesHeld(edge),
        HALVES);
  }

  /** The schedule of a field, which one changes to move a clamp. */
  static Subject cause(FieldCase asked) {
    return asked.subject().part("attach");
  }

  static String word(Edge edge) {
    return edge.name().toLowerCase(Locale.ROOT);
  }

  private static Span at(Hold hold) {
    return hold.attachment().at();
  }
}
