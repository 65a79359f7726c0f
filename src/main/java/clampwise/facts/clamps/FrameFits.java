package clampwise.facts.clamps;

import clampwise.calc.Snap;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.clamps.ClampUse.Role;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.PlacedModule;
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
      String grip = "the range of frame heights that " + frame.use().word() + " grips";
      tell(frame, frame.use().missing(asked.unreadable(), grip, "frame-height"));
    } else if (height.isEmpty()) {
      tell(frame, noHeight(asked, frame.module()));
    } else {
      asked.add(fit(frame, Snap.m(height.get().m()), range.get()));
    }
  }

  static String noHeight(FieldCase asked, PlacedModule module) {
    String type = module.typeName();
    return asked
        .unreadable()
        .missing("the frame height of module " + type, "modules", type, "frame-height");
  }

  /** A frame height in the range of a clamp, with the end of the range that is nearer. */
  private record Sized(double heightM, double minM, double maxM, Unit unit) {

    static Sized of(double heightM, LengthRange range) {
      double minM = Snap.m(range.min().m());
      return new Sized(heightM, minM, Snap.m(range.max().m()), range.min().unit());
    }

    double nearestM() {
      return heightM - minM < maxM - heightM ? minM : maxM;
    }
  }

  private Fact fit(HeldFrame frame, double heightM, LengthRange range) {
    Sized sized = Sized.of(heightM, range);
    return frame.use().role() == Role.MID ? mid(frame, sized) : end(frame, sized);
  }

  private MidClampFit mid(HeldFrame frame, Sized sized) {
    return new MidClampFit(
        Subjects.module(frame.module()),
        cause(frame),
        frame.use().name().at(),
        sized.unit(),
        frameUnit(frame),
        frame.module().name(),
        frame.module().typeName(),
        frame.use().name().value(),
        sized.heightM(),
        sized.minM(),
        sized.maxM(),
        sized.nearestM(),
        fitting(frame, sized.heightM()));
  }

  private EndClampFit end(HeldFrame frame, Sized sized) {
    return new EndClampFit(
        Subjects.module(frame.module()),
        cause(frame),
        frame.use().name().at(),
        sized.unit(),
        frameUnit(frame),
        frame.module().name(),
        frame.module().typeName(),
        frame.use().name().value(),
        sized.heightM(),
        sized.minM(),
        sized.maxM(),
        sized.nearestM(),
        fitting(frame, sized.heightM()));
  }

  private static Map<String, Unit> frameUnit(HeldFrame frame) {
    return Map.of("frameHeightM", frame.module().type().frameHeight().orElseThrow().unit());
  }

  private Optional<String> fitting(HeldFrame frame, double heightM) {
    return frame.isOutOfRange()
        ? fitting.computeIfAbsent(frame.combination(), key -> Optional.of(told(frame, heightM)))
        : Optional.empty();
  }

  private String told(HeldFrame frame, double heightM) {
    Unit unit = frame.module().type().frameHeight().orElseThrow().unit();
    return parts.gripping(frame.use(), heightM, unit);
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
          asked.unwritten(
              "field " + asked.field().name() + " names no known " + role.word(),
              "the " + role.word(),
              role.word().replace(' ', '-')),
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
