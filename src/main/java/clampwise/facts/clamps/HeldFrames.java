package clampwise.facts.clamps;

import clampwise.facts.clamps.ClampUse.Role;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Finds which clamps grip which frames of a field: as the attachments are drawn, or, where none are
 * drawn, a mid clamp between neighbours of a column and an end clamp at its ends.
 */
final class HeldFrames {

  private HeldFrames() {}

  /** Each pair of a module and a clamp once. */
  static List<HeldFrame> of(FieldLayout field, ClampParts parts) {
    Map<String, HeldFrame> frames = new LinkedHashMap<>();
    Stream<HeldFrame> all =
        field.attachmentsUnknown().isPresent() ? byPlace(field, parts) : drawn(field, parts);
    all.forEach(frame -> frames.putIfAbsent(key(frame), frame));
    return List.copyOf(frames.values());
  }

  private static String key(HeldFrame frame) {
    return frame.module().name() + " " + frame.use().word();
  }

  private static Stream<HeldFrame> drawn(FieldLayout field, ClampParts parts) {
    return field.attachments().stream().flatMap(attachment -> drawn(attachment, parts));
  }

  private static Stream<HeldFrame> drawn(Attachment attachment, ClampParts parts) {
    return parts.on(attachment).stream()
        .flatMap(use -> attachment.grips().stream().map(grip -> new HeldFrame(grip.module(), use)));
  }

  private static Stream<HeldFrame> byPlace(FieldLayout field, ClampParts parts) {
    Set<List<Integer>> taken = new HashSet<>();
    field.modules().forEach(module -> taken.add(place(module, 0)));
    return field.modules().stream()
        .flatMap(
            module ->
                Stream.of(-1, 1)
                    .map(step -> taken.contains(place(module, step)) ? Role.MID : Role.END)
                    .flatMap(role -> usual(field, role, parts).stream())
                    .map(use -> new HeldFrame(module, use)));
  }

  private static List<Integer> place(PlacedModule module, int rowsUp) {
    return List.of(module.column(), module.row() + rowsUp);
  }

  private static List<ClampUse> usual(FieldLayout field, Role role, ClampParts parts) {
    return (role == Role.MID ? field.field().midClamp() : field.field().endClamp())
        .flatMap(name -> parts.find(name, role)).stream().toList();
  }
}
