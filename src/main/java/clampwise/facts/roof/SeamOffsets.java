package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.SeamLine;
import clampwise.finding.Subject;
import clampwise.job.Panel;
import java.util.Map;
import java.util.Optional;

/**
 * Holds each attachment against the nearest seam. One that sits on a minor rib is answered as that,
 * not also as being off its seam.
 */
final class SeamOffsets implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    for (PlaneLayout plane : layout.planes()) {
      for (FieldLayout field : plane.fields()) {
        if (plane.seams().isEmpty()) {
          missing(plane, field, answers);
        } else {
          field.attachments().forEach(each -> ask(plane, field, each, limits, answers));
        }
      }
    }
  }

  private static void missing(PlaneLayout plane, FieldLayout field, Answers answers) {
    String reason = plane.reading().seamsUnknown();
    answers.missing(
        SeamOffset.class, RoofSubjects.field(field), reason, plane.plane().panel().at());
  }

  private static void ask(
      PlaneLayout plane, FieldLayout field, Attachment attachment, Limits limits, Answers answers) {
    SeamLine seam = attachment.seam().orElseThrow();
    Limit most =
        limits.get(seam.surveyed() ? "attachment-off-seam-surveyed" : "attachment-off-seam-drawn");
    attachment
        .nearestMinorRibM()
        .ifPresent(minorM -> answers.add(ribOffset(field, attachment, minorM, most)));
    if (!isOnMinorRib(attachment, most)) {
      answers.add(seamOffset(plane, field, attachment, most));
    }
  }

  private static boolean isOnMinorRib(Attachment attachment, Limit within) {
    return attachment.nearestMinorRibM().filter(minorM -> minorM <= within.si()).isPresent();
  }

  private static SeamOffset seamOffset(
      PlaneLayout plane, FieldLayout field, Attachment attachment, Limit most) {
    SeamLine seam = attachment.seam().orElseThrow();
    return new SeamOffset(
        RoofSubjects.attachment(field, attachment),
        cause(field),
        attachment.at(),
        Shown.small(Shown.of(field)),
        Map.of("seamAlongM", Shown.of(field)),
        attachment.name(),
        seam.number(),
        seam.alongM(),
        line(plane),
        attachment.offsetM(),
        most.si(),
        Optional.of(most));
  }

  private static RibOffset ribOffset(
      FieldLayout field, Attachment attachment, double minorM, Limit within) {
    SeamLine rib = attachment.seam().orElseThrow();
    return new RibOffset(
        RoofSubjects.attachment(field, attachment),
        cause(field),
        attachment.at(),
        Shown.small(Shown.of(field)),
        Map.of("ribAlongM", Shown.of(field)),
        attachment.name(),
        rib.number(),
        rib.alongM(),
        minorM,
        attachment.offsetM(),
        within.si(),
        Optional.of(within));
  }

  private static Subject cause(FieldLayout field) {
    return RoofSubjects.field(field).part("attachments");
  }

  private static String line(PlaneLayout plane) {
    Optional<Panel.Kind> kind = plane.panel().map(panel -> panel.kind().value());
    return kind.map(
            value ->
                switch (value) {
                  case STANDING_SEAM -> "seam";
                  case TRAPEZOIDAL -> "structural rib";
                  case CORRUGATED -> "crest";
                })
        .orElse("seam");
  }
}
