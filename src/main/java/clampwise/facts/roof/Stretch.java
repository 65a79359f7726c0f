package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.ZoneArea;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** Two neighbouring attachments that share the load of the modules between them. */
public record Stretch(Attachment from, Attachment to) {

  /** Distance between the two [m]. */
  public double spacingM() {
    return Snap.m(Math.hypot(to.alongM() - from.alongM(), to.upM() - from.upM()));
  }

  /** The more severe zone of the two. */
  Optional<ZoneArea> zone() {
    return Stream.of(from, to)
        .flatMap(end -> end.zone().stream())
        .max(Comparator.comparingInt(ZoneArea::severity));
  }
}
