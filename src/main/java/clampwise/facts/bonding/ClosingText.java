package clampwise.facts.bonding;

import clampwise.facts.layout.PlacedModule;
import clampwise.finding.NaturalOrder;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says in few words which jumpers and lugs close the loops. */
final class ClosingText {

  /** Lugs that are named at most. */
  private static final int MOST = 6;

  private ClosingText() {}

  static String of(Closing closing) {
    return Stream.of(jumpers(closing.jumpers()), lugs(closing.lugs()))
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(" and "));
  }

  private static String jumpers(List<Tie> ties) {
    Map<String, List<Tie>> byField =
        ties.stream()
            .sorted(
                Comparator.comparing((Tie tie) -> tie.one().field(), names())
                    .thenComparing(tie -> tie))
            .collect(
                Collectors.groupingBy(
                    tie -> tie.one().field(), LinkedHashMap::new, Collectors.toList()));
    String named = byField.values().stream().map(TieText::of).collect(Collectors.joining("; "));
    return switch (ties.size()) {
      case 0 -> "";
      case 1 -> "a bonding jumper " + named;
      default -> ties.size() + " bonding jumpers (" + named + ")";
    };
  }

  private static String lugs(List<PlacedModule> frames) {
    List<String> names = frames.stream().map(PlacedModule::name).sorted(names()).toList();
    String named = names.stream().limit(MOST).collect(Collectors.joining(", "));
    int others = Math.max(0, names.size() - MOST);
    return switch (names.size()) {
      case 0 -> "";
      case 1 -> "a grounding lug on " + named;
      default ->
          names.size()
              + " grounding lugs ("
              + named
              + (others == 0 ? ")" : " and " + others + " more)");
    };
  }

  private static Comparator<String> names() {
    return NaturalOrder::compare;
  }
}
