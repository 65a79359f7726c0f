package clampwise.facts.durability;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.job.ModuleClamp;
import clampwise.job.Named;
import clampwise.job.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A mid or end clamp in use, once for each name. */
record ClampInUse(Text name, Optional<ModuleClamp> part, String shelf) {

  static List<ClampInUse> all(Weathering weathering) {
    Map<String, Text> names = new LinkedHashMap<>();
    for (FieldLayout field : weathering.layout().fields()) {
      if (field.attachments().isEmpty()) {
        field.field().midClamp().ifPresent(name -> names.putIfAbsent(name.value(), name));
        field.field().endClamp().ifPresent(name -> names.putIfAbsent(name.value(), name));
      }
      for (Attachment attachment : field.attachments()) {
        Optional<Text> clamp = attachment.clamp();
        clamp.ifPresent(name -> names.putIfAbsent(name.value(), name));
      }
    }
    List<ClampInUse> clamps = new ArrayList<>();
    names.values().forEach(name -> clamps.add(of(name, weathering)));
    return clamps;
  }

  private static ClampInUse of(Text name, Weathering weathering) {
    Named<ModuleClamp> ends = weathering.catalogue().parts().endClamps();
    Optional<ModuleClamp> mid = weathering.catalogue().parts().midClamps().find(name.value());
    boolean isEnd = mid.isEmpty() && ends.names().contains(name.value());
    return new ClampInUse(
        name, mid.or(() -> ends.find(name.value())), isEnd ? "end-clamps" : "mid-clamps");
  }
}
