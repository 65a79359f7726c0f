package clampwise.facts.bonding;

import clampwise.facts.layout.FieldLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The islands of one field that reach no lug, and what would heal them all. */
final class CutOff {

  /** Frames that are named of those that need a lug. */
  private static final int FEW = 4;

  private final FieldLayout field;
  private final List<Island> islands;
  private final List<Tie> ties = new ArrayList<>();
  private final List<String> alone = new ArrayList<>();

  CutOff(FieldLayout field, List<Island> islands, Healing healing) {
    this.field = field;
    this.islands = islands;
    for (Island island : islands) {
      Optional<Tie> tie = healing.jumper(island);
      tie.ifPresentOrElse(ties::add, () -> alone.add(island.first().name()));
    }
    ties.sort(null);
  }

  int frames() {
    return islands.stream().mapToInt(island -> island.frames().size()).sum();
  }

  /** Which frames they are. */
  String where() {
    if (islands.size() > 1) {
      return islands.size()
          + (" groups in field " + field.name())
          + ", tied neither to each other nor to the rest";
    }
    return islands.stream().map(CutOff::named).findFirst().orElse("none");
  }

  private static String named(Island island) {
    int others = island.frames().size() - 1;
    return switch (others) {
      case 0 -> island.first().name();
      case 1 -> island.first().name() + " and the one bonded to it";
      default -> island.first().name() + " and the " + others + " bonded to it";
    };
  }

  String remedy() {
    return Stream.of(jumpers(), lugs())
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private String jumpers() {
    if (ties.isEmpty()) {
      return "";
    }
    if (ties.size() == 1) {
      Tie tie = ties.get(0);
      return "add a bonding jumper from " + tie.one().name() + " to " + tie.other().name();
    }
    String count = " (" + ties.size() + ")";
    return betweenAllColumns()
        ? "add a bonding jumper between each pair of neighbouring columns: "
            + TieText.of(ties)
            + count
        : "add " + ties.size() + " bonding jumpers: " + TieText.of(ties);
  }

  private boolean betweenAllColumns() {
    return TieText.isChain(ties)
        && ties.size() == field.modules().stream().map(m -> m.column()).distinct().count() - 1;
  }

  private String lugs() {
    return switch (alone.size()) {
      case 0 -> "";
      case 1 -> "add a grounding lug on " + alone.get(0) + " or a frame bonded to it";
      default ->
          "add a grounding lug to each of the "
              + alone.size()
              + " groups without a neighbour that leads to ground, such as on "
              + String.join(", ", alone.subList(0, Math.min(alone.size(), FEW)));
    };
  }
}
