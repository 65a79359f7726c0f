package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.SeamLine;

/** Measures how far each line of attachments stays from the cut ends of the panels. */
final class EndDistances extends RowQuestion {

  @Override
  void ask(AttachmentRow row, Limits limits, Answers answers) {
    if (row.plane().outline().isEmpty()) {
      String reason = row.plane().reading().outlineUnknown();
      answers.missing(EndDistance.class, row.subject(), reason, row.plane().plane().panel().at());
    } else if (row.plane().seams().isEmpty()) {
      String reason = row.plane().reading().seamsUnknown();
      answers.missing(EndDistance.class, row.subject(), reason, row.plane().plane().panel().at());
    } else {
      answers.add(fact(row, LeastFromEnd.of(row, limits)));
    }
  }

  private static EndDistance fact(AttachmentRow row, LeastFromEnd least) {
    Attachment worst = row.worst(EndDistances::distanceM);
    double distanceM = distanceM(worst);
    return new EndDistance(
        row.subject(),
        RoofSubjects.field(row.field()).part("attachments near a panel end"),
        SetOut.at(row.field(), worst),
        Shown.small(Shown.of(row.field())),
        row.partName(),
        worst.name(),
        fromLowerM(worst) <= fromUpperM(worst) ? "lower" : "upper",
        distanceM,
        least.leastM(),
        Snap.m(Math.max(0, least.leastM() - distanceM)),
        least.limit());
  }

  private static double distanceM(Attachment attachment) {
    return Snap.m(Math.min(fromLowerM(attachment), fromUpperM(attachment)));
  }

  private static double fromLowerM(Attachment attachment) {
    return attachment.upM() - attachment.seam().map(SeamLine::fromUpM).orElse(0.0);
  }

  private static double fromUpperM(Attachment attachment) {
    return attachment.seam().map(SeamLine::toUpM).orElse(0.0) - attachment.upM();
  }
}
