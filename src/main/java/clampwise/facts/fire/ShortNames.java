package clampwise.facts.fire;

import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;

/** Names many modules in few words: {@code A.R1C1 to A.R1C12}. */
final class ShortNames {

  private static final int MOST_RUNS = 6;

  private record Line(String field, int place) {}

  private ShortNames() {}

  /** Runs along rows or up columns, whichever are fewer. */
  static String of(Collection<PlacedModule> modules) {
    List<String> rows = runs(modules, PlacedModule::row, PlacedModule::column);
    List<String> columns = runs(modules, PlacedModule::column, PlacedModule::row);
    List<String> fewer = columns.size() < rows.size() ? columns : rows;
    return fewer.size() <= MOST_RUNS
        ? String.join(", ", fewer)
        : String.join(", ", fewer.subList(0, MOST_RUNS))
            + " and "
            + (fewer.size() - MOST_RUNS)
            + " more runs";
  }

  private static List<String> runs(
      Collection<PlacedModule> modules,
      ToIntFunction<PlacedModule> line,
      ToIntFunction<PlacedModule> place) {
    Map<Line, List<PlacedModule>> lines =
        modules.stream()
            .sorted(
                Comparator.comparing(PlacedModule::field)
                    .thenComparingInt(line)
                    .thenComparingInt(place))
            .collect(
                Collectors.groupingBy(
                    module -> new Line(module.field(), line.applyAsInt(module)),
                    java.util.LinkedHashMap::new,
                    Collectors.toList()));
    List<String> runs = new ArrayList<>();
    lines.values().forEach(one -> addRuns(one, place, runs));
    return runs;
  }

  private static void addRuns(
      List<PlacedModule> line, ToIntFunction<PlacedModule> place, List<String> runs) {
    int first = 0;
    for (int i = 1; i <= line.size(); i++) {
      boolean ends =
          i == line.size()
              || place.applyAsInt(line.get(i)) != place.applyAsInt(line.get(i - 1)) + 1;
      if (ends) {
        runs.add(run(line.get(first), line.get(i - 1)));
        first = i;
      }
    }
  }

  private static String run(PlacedModule first, PlacedModule last) {
    return first.equals(last) ? first.name() : first.name() + " to " + last.name();
  }
}
