package clampwise.facts.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The lines of a field and the module edges on each.
 *
 * <p>Between two neighbouring modules of a column the line lies in the middle of their gap. The
 * edge of a module without a neighbour lies on such a line if it borders the same gap; otherwise it
 * has a line of its own at the edge. Lines count from the lowest.
 */
final class LineMap {

  /** How far beside the gap an attachment may be drawn and still belongs to the line. */
  private static final double DRAWN_BESIDE_M = 0.010;

  private static final double SAME_PLACE_M = 1e-6;

  private final double[] lines;
  private final double reachM;
  private final List<List<PlacedModule>> below;
  private final List<List<PlacedModule>> above;

  private LineMap(double[] lines, double rowGapM) {
    this.lines = lines;
    this.reachM = rowGapM / 2 + LinePlaces.SAME_LINE_M;
    this.below = emptyLists(lines.length);
    this.above = emptyLists(lines.length);
  }

  /**
   * The lines of a field.
   *
   * @param modules by column, then by row
   */
  static LineMap of(List<PlacedModule> modules, double rowGapM) {
    LinePlaces places = LinePlaces.of(modules, rowGapM);
    LineMap map = new LineMap(places.lines(), rowGapM);
    for (int i = 0; i < modules.size(); i++) {
      map.above.get(map.nearest(places.lowerM()[i])).add(modules.get(i));
      map.below.get(map.nearest(places.upperM()[i])).add(modules.get(i));
    }
    Comparator<PlacedModule> byLeft = Comparator.comparingDouble(PlacedModule::leftM);
    Stream.concat(map.below.stream(), map.above.stream()).forEach(list -> list.sort(byLeft));
    return map;
  }

  List<Double> lines() {
    return Arrays.stream(lines).boxed().toList();
  }

  int count() {
    return lines.length;
  }

  /** Where a line lies [m up]; lines count from 1. */
  double upM(int line) {
    return lines[line - 1];
  }

  /** Modules whose edges lie on a line: those below it, then those above it. */
  List<PlacedModule> modulesOn(int line) {
    return Stream.concat(below.get(line - 1).stream(), above.get(line - 1).stream()).toList();
  }

  /** The module under a place on a line, reached by its upper edge. */
  Optional<PlacedModule> below(int line, double alongM) {
    return at(below.get(line - 1), alongM);
  }

  /** The module over a place on a line, reached by its lower edge. */
  Optional<PlacedModule> above(int line, double alongM) {
    return at(above.get(line - 1), alongM);
  }

  /** Whether a place on a line holds a module. */
  boolean holds(int line, double alongM) {
    return below(line, alongM).isPresent() || above(line, alongM).isPresent();
  }

  /** The line a drawn point belongs to: the nearest with a module there, else the nearest. */
  Optional<Integer> lineAt(double alongM, double upM) {
    double reachM = this.reachM + DRAWN_BESIDE_M;
    int start = firstAtOrAfter(upM - reachM);
    List<Integer> near =
        IntStream.range(start, lines.length)
            .takeWhile(i -> lines[i] <= upM + reachM)
            .mapToObj(i -> i + 1)
            .sorted(Comparator.comparingDouble(line -> Math.abs(upM(line) - upM)))
            .toList();
    return near.stream()
        .filter(line -> holds(line, alongM))
        .findFirst()
        .or(() -> near.stream().findFirst());
  }

  private int nearest(double upM) {
    int right = Math.min(firstAtOrAfter(upM), lines.length - 1);
    int left = Math.max(right - 1, 0);
    return upM - lines[left] <= lines[right] - upM ? left : right;
  }

  private int firstAtOrAfter(double upM) {
    int found = Arrays.binarySearch(lines, upM);
    return found >= 0 ? found : -found - 1;
  }

  private static Optional<PlacedModule> at(List<PlacedModule> sorted, double alongM) {
    int low = 0;
    int high = sorted.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted.get(middle).leftM() <= alongM + SAME_PLACE_M) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low == 0
        ? Optional.empty()
        : Optional.of(sorted.get(low - 1))
            .filter(module -> alongM <= module.rightM() + SAME_PLACE_M);
  }

  private static List<List<PlacedModule>> emptyLists(int count) {
    List<List<PlacedModule>> lists = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      lists.add(new ArrayList<>());
    }
    return lists;
  }
}
