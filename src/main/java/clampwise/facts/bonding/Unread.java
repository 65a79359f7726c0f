package clampwise.facts.bonding;

import clampwise.facts.layout.BondingNames;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Bonding;
import clampwise.job.Bonding.Jumper;
import clampwise.job.Text;
import clampwise.job.Unreadable;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What of the bonding is not known because something in the job could not be read. */
final class Unread {

  private final Map<String, String> fieldBeyond = new TreeMap<>();
  private final boolean procedure;

  private Unread(boolean procedure) {
    this.procedure = procedure;
  }

  /** Why no ground path can be judged, if none can. */
  static Optional<String> all(Layout layout) {
    Unreadable unreadable = layout.job().unreadable();
    return Stream.of("jumpers", "lugs")
        .filter(key -> unreadable.touches("bonding", key))
        .findFirst()
        .map(key -> "not all " + key + " could be read")
        .or(
            () ->
                BondingNames.problems(layout).stream()
                    .findFirst()
                    .map(problem -> "the bonding names " + problem.found()));
  }

  static Unread of(Layout layout, Bonding bonding) {
    boolean procedure = layout.job().unreadable().touches("bonding", "temporary-jumpers");
    Unread unread = new Unread(procedure);
    for (Jumper jumper : bonding.jumpers()) {
      unread.add(jumper.from(), jumper.to(), layout);
      unread.add(jumper.to(), jumper.from(), layout);
    }
    return unread;
  }

  private void add(Optional<Text> frame, Optional<Text> other, Layout layout) {
    if (frame.isPresent() && other.isPresent()) {
      layout.incomplete().stream()
          .filter(field -> other.get().value().startsWith(field + "."))
          .forEach(field -> fieldBeyond.put(frame.get().value(), field));
    }
  }

  /** Why it is not known whether temporary jumpers are used, if it is not. */
  Optional<String> procedure() {
    return procedure
        ? Optional.of("whether temporary jumpers are used could not be read")
        : Optional.empty();
  }

  /** Why it is not known whether an island without a lug reaches ground, if it is not. */
  Optional<String> beyond(Island island) {
    return island.isGrounded() ? Optional.empty() : leading(island);
  }

  /** The jumper that leads from an island to what could not be read, if one does. */
  Optional<String> leading(Island island) {
    return fieldBeyond.isEmpty()
        ? Optional.empty()
        : island.frames().stream()
            .map(PlacedModule::name)
            .flatMap(frame -> beyond(frame).stream())
            .findFirst();
  }

  private Optional<String> beyond(String frame) {
    return Optional.ofNullable(fieldBeyond.get(frame)).map(field -> reason(frame, field));
  }

  private static String reason(String frame, String field) {
    return "a jumper leads from "
        + frame
        + " to field "
        + field
        + ", which could not be read or laid out as written";
  }
}
