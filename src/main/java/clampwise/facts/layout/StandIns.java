package clampwise.facts.layout;

import clampwise.source.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Parts that a sheet or list names in place of those on the drawing: one of a kind that the drawing
 * does not use, where one of the same kind is not named. Where there are several of a kind, none
 * can be told to stand for another.
 */
public final class StandIns {

  private final Map<String, String> standIns = new HashMap<>();

  private final Layout layout;

  private StandIns(Layout layout) {
    this.layout = layout;
  }

  /**
   * The parts of a list that stand for others.
   *
   * @param layout with the names on the drawing
   * @param drawn kinds of the parts on the drawing, by name
   * @param listed kinds of the parts on the list, by name
   */
  public static <K> StandIns of(Layout layout, Map<String, K> drawn, Map<String, K> listed) {
    Map<K, List<String>> strays = without(listed, drawn);
    StandIns found = new StandIns(layout);
    without(drawn, listed)
        .forEach(
            (kind, names) -> {
              List<String> others = strays.getOrDefault(kind, List.of());
              if (names.size() == 1 && others.size() == 1) {
                found.standIns.put(names.get(0), others.get(0));
              }
            });
    return found;
  }

  private static <K> Map<K, List<String>> without(Map<String, K> all, Map<String, K> others) {
    Map<K, List<String>> left = new HashMap<>();
    all.forEach(
        (name, kind) -> {
          if (!others.containsKey(name)) {
            left.computeIfAbsent(kind, unseen -> new ArrayList<>()).add(name);
          }
        });
    return left;
  }

  /** The part that is named in place of another one, if one is. */
  public Optional<String> of(String part) {
    return Optional.ofNullable(standIns.get(part));
  }

  /** Says which part is named in place of another one, to go on with after a message. */
  public String listed(String part) {
    return of(part).map(other -> "; listed is " + other + ", which no drawing has").orElse("");
  }

  /** The same to go on with after a remedy. */
  public String inPlace(String part) {
    return of(part).map(other -> " in place of " + other).orElse("");
  }

  /** Where the drawing names a part in place of which another one is named. */
  public List<Span> drawnAt(String part) {
    return standIns.containsKey(part) ? PartNames.of(layout).of(part) : List.of();
  }
}
