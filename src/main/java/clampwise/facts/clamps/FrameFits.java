package clampwise.facts.clamps;

import clampwise.calc.Snap;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.clamps.ClampUse.Role;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.finding.Subject;
import clampwise.job.LengthRange;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Asks of each module and clamp whether the clamp grips frames of that height. */
final class FrameFits {

  private final FieldCase asked;
  private final ClampParts parts;
  private final Set<String> told = new HashSet<>();
  private final Map<String, Optional<String>> fitting = new LinkedHashMap<>();

  private FrameFits(FieldCase asked) {
    this.asked = asked;
    this.parts = ClampParts.of(asked.layout());
  }

  static void ask(FieldCase asked) {
    FrameFits fits = new FrameFits(asked);
    HeldFrames.of(asked.field(), fits.parts).forEach(fits::judge);
    fits.tellUnnamed(Kind.MID, Role.MID, asked.field().field().midClamp());
    fits.tellUnnamed(Kind.END, Role.END, asked.field().field().endClamp());
  }

  private void judge(HeldFrame frame) {
    Optional<LengthRange> range = frame.use().clamp().frameHeight();
    Optional<Length> height = frame.module().type().frameHeight();
    if (range.isEmpty()) {
      tell(frame, "the frame heights that " + frame.use().word() + " grips are not given");
    } else if (height.isEmpty()) {
      tell(frame, "the frame height of module " + frame.module().typeName() + " is not given");
    } else {
      asked.add(fit(frame, Snap.m(height.get().m()), range.get()));
    }
  }

  private Fact fit(HeldFrame frame, double heightM, LengthRange range) {
    double minM = Snap.m(range.min().m());
    double maxM = Snap.m(range.max().m());
    double nearestM = heightM - minM < maxM - heightM ? minM : maxM;
    ClampUse use = frame.use();
    Subject subject = Subjects.module(frame.module());
    Subject cause = cause(frame);
    String module = frame.module().name();
    String type = frame.module().typeName();
    String clamp = use.name().value();
    Map<String, Unit> units = Map.of("frameHeightM", frameUnit(frame));
    Optional<String> others = fitting(frame, heightM);
    return use.role() == Role.MID
        ? new MidClampFit(
            subject,
            cause,
            use.name().at(),
            range.min().unit(),
            units,
            module,
            type,
            clamp,
            heightM,
            minM,
            maxM,
            nearestM,
            others)
        : new EndClampFit(
            subject,
            cause,
            use.name().at(),
            range.min().unit(),
            units,
            module,
            type,
            clamp,
            heightM,
            minM,
            maxM,
            nearestM,
            others);
  }

  private static Unit frameUnit(HeldFrame frame) {
    return frame.module().type().frameHeight().orElseThrow().unit();
  }

  private Optional<String> fitting(HeldFrame frame, double heightM) {
    return fitting.computeIfAbsent(
        frame.combination(), key -> parts.gripping(frame.use(), heightM));
  }

  private void tell(HeldFrame frame, String reason) {
    if (told.add(frame.combination() + reason)) {
      asked.missing(type(frame.use().role()), cause(frame), reason, frame.use().name().at());
    }
  }

  private void tellUnnamed(Kind kind, Role role, Optional<Text> name) {
    boolean unnamed =
        asked.field().attachments().stream()
            .anyMatch(drawn -> drawn.kind() == kind && parts.on(drawn).isEmpty());
    if (unnamed) {
      asked.missing(
          type(role),
          asked.subject().part(role.word()),
          "field " + asked.field().name() + " names no known " + role.word(),
          name.map(Text::at).orElse(asked.field().at()));
    }
  }

  private static Class<? extends Fact> type(Role role) {
    return role == Role.MID ? MidClampFit.class : EndClampFit.class;
  }

  private static Subject cause(HeldFrame frame) {
    return Subject.of(frame.use().word()).part("module type " + frame.module().typeName());
  }
}
