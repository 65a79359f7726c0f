package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Grip;
import clampwise.job.LengthRange;
import java.util.Comparator;
import java.util.Optional;

/**
 * How far the clamps of a field may shift before the first leaves its clamp zone.
 *
 * @param limit the limit of practice, where no clamp's slack is known
 */
record ClampSlack(double slackM, String from, Optional<Limit> limit) {

  private record Clamp(String name, double slackM) {}

  /** The slack of the clamp that sits nearest to an end of its zone. */
  static ClampSlack of(FieldLayout field, Limits limits) {
    return field.attachments().stream()
        .flatMap(each -> each.grips().stream().flatMap(grip -> clamp(each, grip).stream()))
        .min(Comparator.comparingDouble(Clamp::slackM))
        .map(clamp -> new ClampSlack(clamp.slackM(), "clamp " + clamp.name(), Optional.empty()))
        .orElseGet(() -> ofPractice(limits.get("seam-survey-difference-most")));
  }

  private static Optional<Clamp> clamp(Attachment attachment, Grip grip) {
    return grip.row()
        .map(row -> new Clamp(attachment.name(), slackM(row.zone(), grip.fromCornerM())));
  }

  private static double slackM(LengthRange zone, double fromCornerM) {
    double toStartM = fromCornerM - zone.min().m();
    return Snap.m(Math.min(toStartM, zone.max().m() - fromCornerM));
  }

  private static ClampSlack ofPractice(Limit limit) {
    return new ClampSlack(limit.si(), "practice", Optional.of(limit));
  }
}
