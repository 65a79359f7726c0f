package clampwise.facts.clamps;

import clampwise.calc.Snap;
import clampwise.catalogue.ClampFits;
import clampwise.catalogue.Limit;
import clampwise.facts.clamps.ClampUse.Role;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.ModuleType;
import clampwise.job.Quantity.Length;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Asks of each clamp of a field how far it grips over the frames, and whether it meets the glass.
 */
final class ClampGrips {

  private final FieldCase asked;
  private final Limit least;
  private final Map<String, ModuleType> types = new LinkedHashMap<>();

  private ClampGrips(FieldCase asked) {
    this.asked = asked;
    this.least = asked.limits().get("clamp-grip-least");
    for (PlacedModule module : asked.field().modules()) {
      types.putIfAbsent(module.typeName(), module.type());
    }
  }

  static void ask(FieldCase asked) {
    ClampGrips grips = new ClampGrips(asked);
    uses(asked).forEach(grips::judge);
  }

  /** Each clamp of the field once: as drawn, else as named. */
  private static Collection<ClampUse> uses(FieldCase asked) {
    ClampParts parts = ClampParts.of(asked.layout());
    Map<String, ClampUse> uses = new LinkedHashMap<>();
    Map<String, Kind> seen = new LinkedHashMap<>();
    for (Attachment drawn : asked.field().attachments()) {
      String name = drawn.clamp().map(clamp -> clamp.value()).orElse("");
      if (seen.put(name, drawn.kind()) != drawn.kind()) {
        parts.on(drawn).ifPresent(use -> uses.putIfAbsent(use.word(), use));
      }
    }
    if (uses.isEmpty()) {
      named(asked, parts, uses);
    }
    return uses.values();
  }

  private static void named(FieldCase asked, ClampParts parts, Map<String, ClampUse> uses) {
    for (Role role : Role.values()) {
      (role == Role.MID ? asked.field().field().midClamp() : asked.field().field().endClamp())
          .flatMap(name -> parts.find(name, role))
          .ifPresent(use -> uses.put(use.word(), use));
    }
  }

  private void judge(ClampUse use) {
    Optional<Length> depth = use.clamp().gripDepth();
    if (depth.isEmpty()) {
      String what = "how far " + use.word() + " reaches over a frame";
      String reason = use.missing(asked.unreadable(), what, "grip-depth");
      asked.missing(ClampGrip.class, subject(use), reason, use.name().at());
      asked.missing(GlassReach.class, subject(use), reason, use.name().at());
    } else {
      if (lostM(use) > 0 && depth.get().m() <= lostM(use)) {
        String reason =
            use.word()
                + " does not reach from row to row in the gap of field "
                + asked.field().name();
        asked.missing(ClampGrip.class, subject(use), reason, use.name().at());
      } else {
        asked.add(grip(use, depth.get()));
      }
      types.forEach((name, type) -> glass(use, depth.get(), name, type));
    }
  }

  /** Clamps that reach far enough over the frames of the field, and none of their lips too far. */
  private Optional<String> fitting(ClampUse use, boolean wanted) {
    if (!wanted) {
      return Optional.empty();
    }
    double lipM =
        types.values().stream()
            .flatMap(type -> type.frameLip().stream())
            .mapToDouble(lip -> Snap.m(lip.m()))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    ClampParts parts = ClampParts.of(asked.layout());
    ClampFits suiting = parts.suiting(asked.field(), use).reaching(Snap.m(least.si()), lipM);
    return Optional.of(parts.told(suiting, use));
  }

  private ClampGrip grip(ClampUse use, Length depth) {
    double gripM = Snap.m(depth.m() - lostM(use));
    return new ClampGrip(
        subject(use),
        cause(use).part("grip"),
        use.name().at(),
        depth.unit(),
        asked.field().name(),
        use.word(),
        gripM,
        Snap.m(least.si()),
        Optional.of(least),
        fitting(use, gripM < Snap.m(least.si())));
  }

  /** Half of what a row gap is wider than the clamp sets it. */
  private double lostM(ClampUse use) {
    Optional<Double> setM =
        use.role() == Role.MID ? use.clamp().gap().map(Length::m) : Optional.empty();
    return setM.map(gapM -> Math.max(0, asked.field().rowGapM() - gapM) / 2).orElse(0.0);
  }

  private void glass(ClampUse use, Length depth, String name, ModuleType type) {
    Subject subject = subject(use).part("module type " + name);
    type.frameLip()
        .ifPresentOrElse(
            lip ->
                asked.add(
                    new GlassReach(
                        subject,
                        cause(use).part("module type " + name),
                        use.name().at(),
                        depth.unit(),
                        Map.of("lipM", lip.unit()),
                        use.word(),
                        name,
                        Snap.m(depth.m()),
                        Snap.m(lip.m()),
                        fitting(use, Snap.m(depth.m()) > Snap.m(lip.m())))),
            () -> {
              String what = "the width of the frame's lip of module " + name;
              String reason = asked.unreadable().missing(what, "modules", name, "frame-lip");
              asked.missing(GlassReach.class, subject, reason, asked.field().field().module().at());
            });
  }

  private Subject subject(ClampUse use) {
    return asked.subject().part(use.word());
  }

  private static Subject cause(ClampUse use) {
    return Subject.of(use.word());
  }
}
