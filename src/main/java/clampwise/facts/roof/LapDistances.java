package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.Attachment;
import clampwise.job.Quantity.Offset;
import clampwise.units.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Measures how far each line of attachments stays from the end laps. Where no laps are given, the
 * question is open only on slopes longer than one panel.
 */
final class LapDistances extends RowQuestion {

  @Override
  void ask(AttachmentRow row, Limits limits, Answers answers) {
    if (!row.plane().endLapsM().isEmpty() && !row.plane().reading().areEndLapsLost()) {
      answers.add(fact(row, LeastFromEnd.of(row, limits)));
    } else if (row.plane().reading().areEndLapsLost()) {
      missing(row, row.plane().reading().endLapsUnknown(), answers);
    } else if (slopeM(row) > longestPanel(limits).si()) {
      String reason = row.plane().reading().endLapsUnknown();
      missing(row, reason + ", and it is longer than one panel", answers);
    }
  }

  private static void missing(AttachmentRow row, String reason, Answers answers) {
    answers.missing(LapDistance.class, row.subject(), reason, row.plane().plane().panel().at());
  }

  private static Limit longestPanel(Limits limits) {
    return limits.get("panel-length-most");
  }

  private static double slopeM(AttachmentRow row) {
    return row.plane().outline().map(area -> area.getEnvelopeInternal().getHeight()).orElse(0.0);
  }

  /** The unit in which a lap was written. */
  private static Unit unit(AttachmentRow row, double lapM) {
    return row.plane().plane().endLaps().stream()
        .filter(lap -> lap.m() == lapM)
        .map(Offset::unit)
        .findFirst()
        .orElse(Unit.METRE);
  }

  private static LapDistance fact(AttachmentRow row, LeastFromEnd least) {
    List<Double> laps = row.plane().endLapsM();
    Attachment worst = row.worst(each -> Nearest.distanceM(laps, each.upM()));
    double distanceM = Nearest.distanceM(laps, worst.upM());
    double lapM =
        laps.stream().min(Comparator.comparingDouble(l -> Math.abs(l - worst.upM()))).orElseThrow();
    return new LapDistance(
        row.subject(),
        RoofSubjects.field(row.field()).part("attachments on an end lap"),
        SetOut.at(row.field(), worst),
        Shown.small(Shown.of(row.field())),
        Map.of("lapM", unit(row, lapM)),
        row.partName(),
        worst.name(),
        lapM,
        distanceM,
        least.leastM(),
        Snap.m(Math.max(0, least.leastM() - distanceM)),
        least.limit());
  }
}
