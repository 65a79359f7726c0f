package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.Attachment;
import clampwise.job.Flag;
import clampwise.job.Panel;
import clampwise.job.RoofAttachment;
import java.util.List;
import java.util.Optional;

/** Measures how far attachments that may not sit over clips stay from the clip lines. */
final class ClipDistances extends RowQuestion {

  @Override
  void ask(AttachmentRow row, Limits limits, Answers answers) {
    if (row.part().isEmpty() || !hasClips(row)) {
      return;
    }
    Optional<Flag> overClip = row.part().flatMap(RoofAttachment::overClip);
    if (overClip.isEmpty()) {
      String reason = row.ofPart("whether " + row.partName() + " may sit over a clip", "over-clip");
      answers.missing(ClipDistance.class, row.subject(), reason, row.attachments().get(0).at());
    } else if (!overClip.get().value()) {
      answer(row, limits, answers);
    }
  }

  private static boolean hasClips(AttachmentRow row) {
    return row.plane()
        .panel()
        .filter(Profiles::isSeam)
        .flatMap(Panel::clips)
        .map(clips -> clips.value() != Panel.Clips.THROUGH_FASTENED)
        .orElse(row.plane().panel().filter(Profiles::isSeam).isPresent());
  }

  private static void answer(AttachmentRow row, Limits limits, Answers answers) {
    if (row.plane().supports().isEmpty()) {
      String what = "where the clip lines of plane " + row.plane().name() + " lie";
      String reason =
          row.plane().reading().unreadable().missing(what, "planes", row.plane().name(), "purlins");
      answers.missing(ClipDistance.class, row.subject(), reason, row.plane().plane().panel().at());
    } else {
      answers.add(fact(row, limits.get("clip-clearance-least")));
    }
  }

  private static ClipDistance fact(AttachmentRow row, Limit least) {
    List<Double> clips = row.plane().supports();
    Attachment worst = row.worst(each -> Nearest.distanceM(clips, each.upM()));
    double distanceM = Nearest.distanceM(clips, worst.upM());
    return new ClipDistance(
        row.subject(),
        RoofSubjects.field(row.field()).part("attachments over clips"),
        SetOut.at(row.field(), worst),
        Shown.small(Shown.of(row.field())),
        row.partName(),
        worst.name(),
        distanceM,
        least.si(),
        Snap.m(Math.max(0, least.si() - distanceM)),
        Optional.of(least));
  }
}
