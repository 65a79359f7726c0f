package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.facts.clamps.ClampUse.Role;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.finding.Subject;
import clampwise.job.Attach;
import clampwise.job.Attach.Point;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Asks of attachments that are written one by one whether they hold a module, and whether with the
 * right kind of clamp. Attachments placed by the program hold modules by construction.
 */
final class WrittenAttachments {

  private final FieldCase asked;
  private final ClampParts parts;
  private final Unit shown;

  private WrittenAttachments(FieldCase asked, Attach attach) {
    this.asked = asked;
    this.parts = ClampParts.of(asked.layout());
    this.shown =
        Stream.concat(
                attach.points().stream().map(Point::at),
                RowStart.of(asked.field()).values().stream().map(RowStart::spot))
            .map(spot -> spot.along().unit())
            .findFirst()
            .orElse(Unit.METRE);
  }

  static void ask(FieldCase asked) {
    Optional<Attach> attach = asked.field().field().attach().filter(Schedules::isWrittenOut);
    Optional<String> unknown = asked.field().attachmentsUnknown();
    if (attach.isPresent() && unknown.isPresent()) {
      tell(asked, unknown.get());
    } else if (attach.isPresent()) {
      WrittenAttachments written = new WrittenAttachments(asked, attach.get());
      asked.field().attachments().forEach(written::judge);
    }
  }

  private static void tell(FieldCase asked, String reason) {
    List<Class<? extends Fact>> questions = List.of(AttachmentHold.class, ClampPlace.class);
    questions.forEach(type -> asked.missing(type, asked.subject(), reason, asked.scheduleAt()));
  }

  private void judge(Attachment attachment) {
    asked.add(hold(attachment));
    if (attachment.kind() != Kind.NONE) {
      parts
          .on(attachment)
          .filter(use -> isOwn(use.name()))
          .ifPresent(use -> judge(attachment, use));
    }
  }

  private AttachmentHold hold(Attachment attachment) {
    return new AttachmentHold(
        subject(attachment),
        ModuleHolds.cause(asked),
        attachment.at(),
        shown,
        attachment.name(),
        attachment.alongM(),
        attachment.upM(),
        attachment.grips().size(),
        1);
  }

  /** Whether a clamp was written at the attachment rather than for the field. */
  private boolean isOwn(Text name) {
    return Stream.of(asked.field().field().midClamp(), asked.field().field().endClamp())
        .flatMap(Optional::stream)
        .noneMatch(usual -> usual.at().equals(name.at()));
  }

  private void judge(Attachment attachment, ClampUse use) {
    Role right = attachment.kind() == Kind.MID ? Role.MID : Role.END;
    asked.add(
        new ClampPlace(
            subject(attachment),
            use.name().at(),
            attachment.name(),
            use.word(),
            attachment.grips().size(),
            use.role() == Role.MID ? 2 : 1,
            right.word()));
  }

  private Subject subject(Attachment attachment) {
    String before = asked.field().name() + ".";
    String name = attachment.name();
    String own = name.startsWith(before) ? name.substring(before.length()) : name;
    return asked.subject().part("attachment " + own);
  }
}
