package clampwise.facts.roof;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.RoofAttachment;
import clampwise.job.SeamClamp;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The attachments of one kind on one line of a field: they share their distance from panel ends,
 * laps and clips.
 *
 * @param name such as {@code line 2}, or the attachment's own name where it is on no line
 * @param part the seam clamp or rib bracket, if known
 */
record AttachmentRow(
    PlaneLayout plane,
    FieldLayout field,
    String name,
    Optional<RoofAttachment> part,
    List<Attachment> attachments) {

  private record Key(int line, String name, String part) {}

  /** All rows of a field, from the lowest line up. */
  static List<AttachmentRow> of(PlaneLayout plane, FieldLayout field, PartLookup parts) {
    Map<Key, List<Attachment>> byKey = new LinkedHashMap<>();
    for (Attachment each : field.attachments()) {
      byKey.computeIfAbsent(key(each), key -> new ArrayList<>()).add(each);
    }
    return byKey.entrySet().stream()
        .map(
            row ->
                new AttachmentRow(
                    plane,
                    field,
                    row.getKey().name(),
                    row.getValue().get(0).part().flatMap(parts::find),
                    List.copyOf(row.getValue())))
        .toList();
  }

  private static Key key(Attachment each) {
    String name = each.line() > 0 ? "line " + each.line() : "attachment " + each.name();
    return new Key(each.line(), name, each.part().map(part -> part.value()).orElse(""));
  }

  Subject subject() {
    return RoofSubjects.field(field).part(name).part(partName());
  }

  /** Says why something about the part is not known. */
  String ofPart(String what, String key) {
    String shelf =
        part.filter(SeamClamp.class::isInstance).isPresent() ? "seam-clamps" : "rib-brackets";
    return plane.reading().unreadable().missing(what, "parts", shelf, partName(), key);
  }

  String partName() {
    return attachments.get(0).part().map(part -> part.value()).orElse("attachments");
  }

  /** The attachment for which a distance is least. */
  Attachment worst(ToDoubleFunction<Attachment> distanceM) {
    return attachments.stream().min(Comparator.comparingDouble(distanceM)).orElseThrow();
  }
}
