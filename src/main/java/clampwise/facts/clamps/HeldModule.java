package clampwise.facts.clamps;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Grip;
import clampwise.facts.layout.Grip.Edge;
import clampwise.facts.layout.Grip.Half;
import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A module with everything that grips it.
 *
 * @param grips left to right on each edge
 */
record HeldModule(PlacedModule module, List<HeldModule.Hold> grips) {

  /** One grip and the attachment it belongs to. */
  record Hold(Grip grip, Attachment attachment) {}

  /** All modules of a field, in its order. */
  static List<HeldModule> of(FieldLayout field) {
    Map<String, List<Hold>> holds = new HashMap<>();
    for (Attachment attachment : field.attachments()) {
      for (Grip grip : attachment.grips()) {
        holds
            .computeIfAbsent(grip.module().name(), name -> new ArrayList<>())
            .add(new Hold(grip, attachment));
      }
    }
    return field.modules().stream()
        .map(module -> new HeldModule(module, holds.getOrDefault(module.name(), List.of())))
        .toList();
  }

  List<Hold> on(Edge edge) {
    return grips.stream()
        .filter(hold -> hold.grip().edge() == edge)
        .sorted(Comparator.comparingDouble(hold -> hold.grip().fromLeftM()))
        .toList();
  }

  List<Hold> on(Edge edge, Half half) {
    return on(edge).stream().filter(hold -> hold.grip().half() == half).toList();
  }

  /** How many halves of an edge are held. */
  int halvesHeld(Edge edge) {
    return (int) on(edge).stream().map(hold -> hold.grip().half()).distinct().count();
  }
}
