package clampwise.facts.survey;

import clampwise.calc.Snap;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Grip;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.SeamLine;
import clampwise.job.LengthRange;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;

/** How far seams may lie from the drawing before a clamp leaves the clamp zone that holds it. */
final class ClampRoom {

  private ClampRoom() {}

  /**
   * For each seam the smallest distance, on the drawing, from a clamp on it to an end of the clamp
   * zone the clamp sits in; where zones overlap, the one with the most room counts. A zone that
   * reaches the middle of the edge has no end there. Clamps that the drawing has outside all zones
   * are left out; common practice, no source.
   *
   * @param field valid for fields whose attachments are known and sit on seams that the drawing
   *     places
   * @return the room by the number of the seam [m], zero or more
   */
  static Map<Integer, Double> bySeam(FieldLayout field) {
    Map<Integer, Double> rooms = new HashMap<>();
    for (Attachment attachment : field.attachments()) {
      attachment
          .seam()
          .filter(seam -> seam.nominalM().isPresent())
          .ifPresent(
              seam ->
                  rooms(attachment, seam)
                      .forEach(roomM -> rooms.merge(seam.number(), roomM, Math::min)));
    }
    return rooms;
  }

  private static Stream<Double> rooms(Attachment attachment, SeamLine seam) {
    return attachment.grips().stream().flatMap(grip -> room(grip, seam));
  }

  private static Stream<Double> room(Grip grip, SeamLine seam) {
    PlacedModule module = grip.module();
    double driftM = seam.alongM() - seam.nominalM().orElseThrow();
    double fromLeftM = grip.fromLeftM() - driftM;
    double fromCornerM = Snap.m(Math.min(fromLeftM, module.alongM() - fromLeftM));
    return module.type().clampZones().stream()
        .filter(row -> row.side().value() == module.clampedSide())
        .map(row -> room(row.zone(), fromCornerM, module.alongM() / 2))
        .filter(roomM -> roomM >= 0)
        .max(Double::compare)
        .stream();
  }

  private static double room(LengthRange zone, double fromCornerM, double middleM) {
    double belowM = fromCornerM - zone.min().m();
    double aboveM = zone.max().m() < middleM ? zone.max().m() - fromCornerM : belowM;
    return Snap.m(Math.min(belowM, aboveM));
  }
}
