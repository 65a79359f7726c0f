package clampwise.facts.clamps;

import clampwise.calc.Snap;
import clampwise.facts.Fact;
import clampwise.facts.clamps.ClampUse.Role;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.finding.Subject;
import clampwise.job.Field;
import clampwise.job.ModuleClamp;
import clampwise.job.Quantity.Length;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Asks of each mid clamp of a field whether it suits the gap between the rows. */
final class RowGaps {

  private final FieldCase asked;
  private final ClampUse use;
  private final double gapM;

  private RowGaps(FieldCase asked, ClampUse use) {
    this.asked = asked;
    this.use = use;
    this.gapM = Snap.m(asked.field().rowGapM());
  }

  static void ask(FieldCase asked) {
    ClampParts parts = ClampParts.of(asked.layout());
    Map<String, ClampUse> uses = new LinkedHashMap<>();
    asked.field().attachments().stream()
        .filter(attachment -> attachment.kind() == Kind.MID)
        .flatMap(attachment -> parts.on(attachment).stream())
        .filter(use -> use.role() == Role.MID)
        .forEach(use -> uses.putIfAbsent(use.name().value(), use));
    uses.values().forEach(use -> new RowGaps(asked, use).judge());
  }

  private void judge() {
    ModuleClamp clamp = use.clamp();
    clamp
        .gapAtMost()
        .or(clamp::gap)
        .ifPresentOrElse(most -> asked.add(widest(most)), () -> tell(WidestGap.class));
    clamp.gap().ifPresentOrElse(set -> asked.add(width(set)), () -> tell(ClampWidth.class));
  }

  private WidestGap widest(Length most) {
    return new WidestGap(
        subject(),
        at(),
        shown(),
        Map.of("mostM", most.unit()),
        asked.field().name(),
        use.name().value(),
        gapM,
        Snap.m(most.m()),
        fitting(gapM > Snap.m(most.m())));
  }

  private ClampWidth width(Length set) {
    return new ClampWidth(
        subject(),
        at(),
        shown(),
        Map.of("leastM", set.unit()),
        asked.field().name(),
        use.name().value(),
        gapM,
        Snap.m(set.m()),
        fitting(gapM < Snap.m(set.m())));
  }

  private Optional<String> fitting(boolean wanted) {
    ClampParts parts = ClampParts.of(asked.layout());
    return wanted
        ? Optional.of(parts.told(parts.suiting(asked.field(), use), use))
        : Optional.empty();
  }

  private void tell(Class<? extends Fact> question) {
    String reason =
        use.missing(asked.unreadable(), "the row gap that " + use.word() + " holds", "gap");
    asked.missing(question, subject(), reason, use.name().at());
  }

  private Subject subject() {
    return asked.subject().part("row gap").part(use.word());
  }

  private Optional<Length> written() {
    Field field = asked.field().field();
    return field.rowGap().or(field::gap);
  }

  private Span at() {
    return written().map(Length::at).orElse(use.name().at());
  }

  private Unit shown() {
    return written().map(Length::unit).orElse(Unit.MILLIMETRE);
  }
}
