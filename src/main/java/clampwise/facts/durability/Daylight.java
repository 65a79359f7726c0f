package clampwise.facts.durability;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.Subjects;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Grip;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Obstruction.Kind;
import clampwise.job.Quantity.Length;
import clampwise.job.RoofAttachment;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;

/**
 * Asks whether attachments keep off skylights and translucent panels. An attachment that goes with
 * its module, because that lies over the skylight or too near, is found elsewhere.
 */
record Daylight(Weathering weathering) {

  void ask() {
    for (PlaneLayout plane : weathering.layout().planes()) {
      for (Obstacle obstacle : plane.obstacles()) {
        if (isDaylight(obstacle) && !plane.fields().isEmpty()) {
          askAttachments(plane, obstacle);
        }
      }
    }
  }

  private static boolean isDaylight(Obstacle obstacle) {
    Kind kind = obstacle.obstruction().kind().value();
    return kind == Kind.SKYLIGHT || kind == Kind.TRANSLUCENT_PANEL;
  }

  private void askAttachments(PlaneLayout plane, Obstacle obstacle) {
    Limit least = weathering.limit("daylight-panel-distance-least");
    boolean none = true;
    for (FieldLayout field : plane.fields()) {
      for (Attachment attachment : field.attachments()) {
        double distanceM = distanceM(field, attachment, obstacle);
        if (distanceM < Snap.m(least.si()) && !goesAnyway(attachment, obstacle)) {
          weathering.add(fact(plane, obstacle, attachment.name(), attachment.at(), distanceM));
          none = false;
        }
      }
    }
    if (none) {
      weathering.add(fact(plane, obstacle, "no attachment", obstacle.at(), Snap.m(least.si())));
    }
  }

  /** Distance of an attachment's body, which is long along the seam, from the body of a thing. */
  static double distanceM(FieldLayout field, Attachment attachment, Obstacle obstacle) {
    double halfM = field.part().flatMap(RoofAttachment::bodyLength).map(Length::m).orElse(0.0) / 2;
    Envelope body =
        new Envelope(
            attachment.alongM(),
            attachment.alongM(),
            attachment.upM() - halfM,
            attachment.upM() + halfM);
    return Snap.m(body.distance(obstacle.body().getEnvelopeInternal()));
  }

  private static boolean goesAnyway(Attachment attachment, Obstacle obstacle) {
    Envelope keepClear = obstacle.keepClear().getEnvelopeInternal();
    for (Grip grip : attachment.grips()) {
      Envelope shared = keepClear.intersection(new ModuleReach(grip.module()).box());
      if (!shared.isNull() && Snap.m(Math.min(shared.getWidth(), shared.getHeight())) > 0) {
        return true;
      }
    }
    return false;
  }

  private DaylightDistance fact(
      PlaneLayout plane, Obstacle obstacle, String attachment, Span at, double distanceM) {
    Limit least = weathering.limit("daylight-panel-distance-least");
    return new DaylightDistance(
        subject(plane, obstacle).part(attachment),
        subject(plane, obstacle).part("attachments"),
        at,
        unit(plane),
        attachment,
        obstacle.name(),
        distanceM,
        Snap.m(least.si()),
        Optional.of(least));
  }

  private static Subject subject(PlaneLayout plane, Obstacle obstacle) {
    return Subjects.plane(plane.name()).part(obstacle.name());
  }

  private static Unit unit(PlaneLayout plane) {
    return Shown.small(Shown.of(plane));
  }
}
