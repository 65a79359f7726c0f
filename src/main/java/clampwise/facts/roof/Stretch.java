package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limits;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.SeamLine;
import clampwise.facts.layout.ZoneArea;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Two neighbouring attachments that share the load of the modules between them.
 *
 * @param spacingM distance between the two; one that counts as on its seam counts from the seam [m]
 */
public record Stretch(Attachment from, Attachment to, double spacingM) {

  static Stretch of(Attachment from, Attachment to, Limits limits) {
    double alongM = alongM(to, limits) - alongM(from, limits);
    return new Stretch(from, to, Snap.m(Math.hypot(alongM, to.upM() - from.upM())));
  }

  /** Points are drawn to whole millimetres; seams are where they are. */
  private static double alongM(Attachment each, Limits limits) {
    return each.seam()
        .filter(seam -> each.offsetM() <= limits.get(mostOffSeam(seam)).si())
        .map(SeamLine::alongM)
        .orElse(each.alongM());
  }

  private static String mostOffSeam(SeamLine seam) {
    return seam.surveyed() ? "attachment-off-seam-surveyed" : "attachment-off-seam-drawn";
  }

  /** The more severe zone of the two. */
  Optional<ZoneArea> zone() {
    return Stream.of(from, to)
        .flatMap(end -> end.zone().stream())
        .max(Comparator.comparingInt(ZoneArea::severity));
  }
}
