package clampwise.facts.clamps;

import clampwise.catalogue.AttachmentFits;
import clampwise.catalogue.Catalogue;
import clampwise.catalogue.ClampFits;
import clampwise.catalogue.Fits;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.Text;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Asks of each module type of a field whether it is listed with the parts that hold it. */
final class ListedParts {

  private static final String ATTACHMENT = "attachment";

  private final FieldCase asked;
  private final Map<String, Used> used = new LinkedHashMap<>();

  private ListedParts(FieldCase asked) {
    this.asked = asked;
  }

  /** A part that holds modules of a type. */
  private record Used(PlacedModule module, String kind, Text part) {}

  static void ask(FieldCase asked) {
    ListedParts parts = new ListedParts(asked);
    if (asked.field().attachmentsUnknown().isPresent()) {
      parts.addAttachments();
    } else {
      asked.field().attachments().forEach(parts::add);
    }
    HeldFrames.of(asked.field(), ClampParts.of(asked.layout())).forEach(parts::add);
    parts.used.values().forEach(parts::judge);
  }

  private void add(Attachment attachment) {
    attachment.grips().forEach(grip -> add(grip.module(), ATTACHMENT, attachment.part()));
  }

  private void addAttachments() {
    asked
        .field()
        .modules()
        .forEach(module -> add(module, ATTACHMENT, asked.field().field().attachment()));
  }

  /** A clamp that does not grip the frame is told as such. */
  private void add(HeldFrame frame) {
    if (!frame.isOutOfRange()) {
      ClampUse use = frame.use();
      add(frame.module(), use.role().word(), Optional.of(use.name()));
    }
  }

  private void add(PlacedModule module, String kind, Optional<Text> part) {
    part.ifPresent(
        name ->
            used.putIfAbsent(
                module.typeName() + " " + kind + " " + name, new Used(module, kind, name)));
  }

  private void judge(Used part) {
    Optional<List<Text>> listed = part.module.type().listedWith();
    String type = part.module.typeName();
    if (listed.isEmpty()) {
      String unwritten = "module " + type + " gives no list of parts it is listed with";
      String what = "the list of parts that module " + type + " is listed with";
      String reason = asked.unreadable().unwritten(unwritten, what, "modules", type, "listed-with");
      asked.missing(ListedPart.class, subject(part), reason, part.part.at());
    } else {
      asked.add(fact(part, listed.get().stream().map(Text::value).toList()));
    }
  }

  private ListedPart fact(Used part, List<String> listed) {
    String name = part.part.value();
    return new ListedPart(
        subject(part),
        Subject.of("module type " + part.module.typeName()).part(part.kind + " " + name),
        part.part.at(),
        part.module.typeName(),
        part.kind,
        name,
        (int) Stream.of(name).filter(listed::contains).count(),
        1,
        listed,
        listed.contains(name) ? Optional.empty() : Optional.of(fitting(part, listed)));
  }

  private String fitting(Used part, List<String> listed) {
    return fits(part).among(listed, "the listing of the module").told("another " + word(part));
  }

  private static String word(Used part) {
    return part.kind.equals(ATTACHMENT) ? "seam clamp or rib bracket" : part.kind;
  }

  /** Parts of the kind that suit frame or covering. */
  private Fits fits(Used part) {
    Catalogue all = ClampParts.of(asked.layout()).all();
    if (part.kind.equals(ATTACHMENT)) {
      return asked.plane().panel().map(panel -> AttachmentFits.of(all, panel)).orElse(Fits.NONE);
    }
    ClampFits clamps = ClampFits.in(all);
    part.module.type().frameHeight().ifPresent(h -> clamps.gripping(h.m(), h.unit()));
    return part.kind.equals(ClampUse.Role.MID.word()) ? clamps.mid() : clamps.end();
  }

  private Subject subject(Used part) {
    return asked
        .subject()
        .part("module type " + part.module.typeName())
        .part(part.kind + " " + part.part.value());
  }
}
