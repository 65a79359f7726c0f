package clampwise.facts.bonding;

import clampwise.facts.Answers;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.Bonding;
import clampwise.job.Flag;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Asks of each grounded field what loses ground when one of its modules is taken out. */
final class Removals {

  private static final int AT_MOST = 0;

  private final BondGraph graph;
  private final boolean healed;
  private final Bonding bonding;
  private final Answers answers;
  private final Cuts cuts;
  private final Optional<Cuts> sure;

  private Removals(BondGraph graph, boolean healed, Bonding bonding, Answers answers) {
    this.graph = graph;
    this.healed = healed;
    this.bonding = bonding;
    this.answers = answers;
    this.cuts = new Cuts(Net.of(graph, false));
    this.sure = graph.isInDoubt() ? Optional.of(new Cuts(Net.of(graph, true))) : Optional.empty();
  }

  /**
   * @param graph the frames with what grounds those that are not grounded as drawn
   * @param healed whether there are such
   */
  static void judge(
      BondGraph graph, boolean healed, Bonding bonding, Unread unread, Answers answers) {
    Removals removals = new Removals(graph, healed, bonding, answers);
    String remedy = removals.remedy();
    Map<String, List<Island>> byField = new HashMap<>();
    graph.islands().stream()
        .filter(Island::isGrounded)
        .forEach(
            island ->
                island
                    .fields()
                    .forEach(f -> byField.computeIfAbsent(f, k -> new ArrayList<>()).add(island)));
    for (FieldLayout field : graph.frames().fields()) {
      List<Island> own = byField.getOrDefault(field.name(), List.of());
      if (!own.isEmpty()) {
        removals.judge(field, own, unread, remedy);
      }
    }
  }

  private String remedy() {
    return isBridged() || cuts.isNone() ? "" : ClosingText.of(Closing.of(graph));
  }

  private boolean isBridged() {
    return bonding.temporaryJumpers().filter(Flag::value).isPresent();
  }

  private void judge(FieldLayout field, List<Island> own, Unread unread, String remedy) {
    List<PlacedModule> cutting = field.modules().stream().filter(m -> cuts.by(m) > 0).toList();
    Optional<String> unknown =
        own.stream()
            .flatMap(island -> unread.leading(island).stream())
            .findFirst()
            .or(() -> cutting.isEmpty() ? doubt(field, own) : unread.procedure());
    Subject subject = Subjects.field(field.name()).part("removal of a module");
    unknown.ifPresentOrElse(
        reason -> answers.missing(ModuleRemoval.class, subject, reason, at(field)),
        () -> answers.add(fact(field, subject, cutting, remedy)));
  }

  /** What is not known of parts without which a frame would hang on another one. */
  private Optional<String> doubt(FieldLayout field, List<Island> own) {
    return sure.filter(known -> field.modules().stream().anyMatch(m -> isLost(m, known)))
        .map(
            known ->
                own.stream()
                    .flatMap(island -> island.doubts().stream())
                    .distinct()
                    .collect(Collectors.joining("; ")));
  }

  private boolean isLost(PlacedModule frame, Cuts known) {
    return cuts.isGrounded(frame) && (!known.isGrounded(frame) || known.by(frame) > 0);
  }

  private ModuleRemoval fact(
      FieldLayout field, Subject subject, List<PlacedModule> cutting, String remedy) {
    PlacedModule worst = worst(field, cutting);
    return new ModuleRemoval(
        subject,
        at(field),
        Unit.NUMBER,
        field.name(),
        field.modules().size(),
        cutting.size(),
        worst.name(),
        cuts.by(worst),
        AT_MOST,
        isBridged(),
        healed ? "once all frames are grounded, " : "",
        remedy);
  }

  /** The first of those that cut off most. */
  private PlacedModule worst(FieldLayout field, List<PlacedModule> cutting) {
    PlacedModule worst = field.modules().get(0);
    for (PlacedModule module : cutting) {
      worst = cuts.by(module) > cuts.by(worst) ? module : worst;
    }
    return worst;
  }

  /** Where it is said that no temporary jumper is used, else where the jumpers are. */
  private Span at(FieldLayout field) {
    return bonding
        .temporaryJumpers()
        .map(Flag::at)
        .orElseGet(() -> new BondingPlaces(bonding).jumpers(field));
  }
}
