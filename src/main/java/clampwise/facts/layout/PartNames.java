package clampwise.facts.layout;

import clampwise.job.Bonding;
import clampwise.job.Field;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Where fields, schedules and bonding name their parts. */
public final class PartNames {

  private final Map<String, Set<Span>> places = new HashMap<>();

  private PartNames() {}

  /** All names of a layout. */
  public static PartNames of(Layout layout) {
    PartNames names = new PartNames();
    for (FieldLayout each : layout.fields()) {
      Field field = each.field();
      names.add(Optional.of(field.module()));
      names.add(field.attachment());
      names.add(field.midClamp());
      names.add(field.endClamp());
      for (Attachment attachment : each.attachments()) {
        names.add(attachment.part());
        names.add(attachment.clamp());
      }
    }
    layout.job().bonding().ifPresent(names::add);
    return names;
  }

  private void add(Bonding bonding) {
    add(bonding.jumper());
    add(bonding.lug());
    bonding.jumpers().forEach(jumper -> add(jumper.part()));
    bonding.lugs().forEach(lug -> add(lug.part()));
  }

  private void add(Optional<Text> name) {
    if (name.isPresent()) {
      places
          .computeIfAbsent(name.get().value(), unseen -> new LinkedHashSet<>())
          .add(name.get().at());
    }
  }

  /** The places at which a part is named. */
  public List<Span> of(String part) {
    return new ArrayList<>(places.getOrDefault(part, Set.of()));
  }
}
