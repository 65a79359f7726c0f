package clampwise.facts.durability;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.RibBracket;
import clampwise.job.RoofAttachment;
import clampwise.job.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A seam clamp or rib bracket on a covering, once for each of the two. */
record UsedPart(PlaneLayout plane, Text name, RoofAttachment part) {

  static List<UsedPart> all(Weathering weathering) {
    Map<String, UsedPart> found = new LinkedHashMap<>();
    for (PlaneLayout plane : weathering.layout().planes()) {
      for (FieldLayout field : plane.fields()) {
        for (Text name : names(field)) {
          String key = plane.panelName() + " / " + name.value();
          weathering
              .catalogue()
              .attachment(name.value())
              .ifPresent(part -> found.putIfAbsent(key, new UsedPart(plane, name, part)));
        }
      }
    }
    return new ArrayList<>(found.values());
  }

  private static Iterable<Text> names(FieldLayout field) {
    Map<String, Text> names = new LinkedHashMap<>();
    for (Attachment attachment : field.attachments()) {
      Optional<Text> part = attachment.part();
      part.ifPresent(name -> names.putIfAbsent(name.value(), name));
    }
    if (names.isEmpty()) {
      field.field().attachment().ifPresent(name -> names.put(name.value(), name));
    }
    return names.values();
  }

  String shelf() {
    return part instanceof RibBracket ? "rib-brackets" : "seam-clamps";
  }

  /** What it is called in messages. */
  String word() {
    return (part instanceof RibBracket ? "bracket " : "clamp ") + name;
  }
}
