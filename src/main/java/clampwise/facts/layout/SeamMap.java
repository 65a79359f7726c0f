package clampwise.facts.layout;

import clampwise.calc.Snap;
import clampwise.job.Panel;
import clampwise.job.Quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds seams and minor ribs of a plane by place, in logarithmic time. */
final class SeamMap {

  private static final double SAME_M = 1e-6;

  private final List<SeamLine> seams;
  private final double[] alongM;
  private final double[] minorM;
  private final NavigableMap<Integer, List<SeamLine>> byNumber;

  private SeamMap(List<SeamLine> seams, double[] minorM) {
    this.seams = seams;
    this.alongM = seams.stream().mapToDouble(SeamLine::alongM).toArray();
    this.minorM = minorM;
    this.byNumber =
        seams.stream()
            .collect(Collectors.groupingBy(SeamLine::number, TreeMap::new, Collectors.toList()));
  }

  /**
   * The map of a plane.
   *
   * @param seams left to right
   */
  static SeamMap of(List<SeamLine> seams, Optional<Panel> panel) {
    return new SeamMap(seams, minorRibs(seams, panel));
  }

  /** Minor ribs right of each structural rib, and of one that would stand left of the first. */
  private static double[] minorRibs(List<SeamLine> seams, Optional<Panel> panel) {
    List<Length> offsets = panel.map(Panel::minorRibs).orElse(List.of());
    Stream<Double> before =
        seams.stream()
            .limit(1)
            .flatMap(s -> panel.flatMap(Panel::pitch).stream().map(p -> s.alongM() - p.m()));
    return Stream.concat(before, seams.stream().map(SeamLine::alongM))
        .flatMap(ribM -> offsets.stream().map(offset -> Snap.m(ribM + offset.m())))
        .mapToDouble(Double::doubleValue)
        .sorted()
        .toArray();
  }

  boolean isEmpty() {
    return seams.isEmpty();
  }

  List<SeamLine> all() {
    return seams;
  }

  int lastNumber() {
    return byNumber.isEmpty() ? 0 : byNumber.lastKey();
  }

  /** The seam nearest to a point, one that runs there before one that does not. */
  Optional<SeamLine> nearest(double alongM, double upM) {
    int right = firstAtOrAfter(this.alongM, alongM);
    Optional<SeamLine> here = nearer(alongM, running(right - 1, -1, upM), running(right, 1, upM));
    return here.or(() -> nearer(alongM, at(right - 1), at(right)));
  }

  /** Seams between two places that run at a height, ends included, left to right. */
  List<SeamLine> crossing(double leftM, double rightM, double upM) {
    List<SeamLine> found = new ArrayList<>();
    for (int i = firstAtOrAfter(alongM, leftM - SAME_M);
        i < alongM.length && alongM[i] <= rightM + SAME_M;
        i++) {
      if (runsAt(seams.get(i), upM)) {
        found.add(seams.get(i));
      }
    }
    return found;
  }

  /** The seam of a number, the piece that runs at a height if the outline interrupts it. */
  Optional<SeamLine> numbered(int number, double upM) {
    List<SeamLine> pieces = byNumber.getOrDefault(number, List.of());
    return pieces.stream()
        .filter(seam -> runsAt(seam, upM))
        .findFirst()
        .or(() -> pieces.stream().findFirst());
  }

  OptionalDouble fromMinorRib(double alongM) {
    int right = firstAtOrAfter(minorM, alongM);
    return Stream.of(right - 1, right)
        .filter(i -> i >= 0 && i < minorM.length)
        .mapToDouble(i -> Snap.m(Math.abs(minorM[i] - alongM)))
        .min();
  }

  private Optional<SeamLine> running(int start, int step, double upM) {
    for (int i = start; i >= 0 && i < seams.size(); i += step) {
      if (runsAt(seams.get(i), upM)) {
        return Optional.of(seams.get(i));
      }
    }
    return Optional.empty();
  }

  private Optional<SeamLine> at(int index) {
    return index >= 0 && index < seams.size() ? Optional.of(seams.get(index)) : Optional.empty();
  }

  private static Optional<SeamLine> nearer(
      double alongM, Optional<SeamLine> left, Optional<SeamLine> right) {
    if (left.isEmpty() || right.isEmpty()) {
      return left.or(() -> right);
    }
    double toLeftM = Math.abs(alongM - left.get().alongM());
    double toRightM = Math.abs(right.get().alongM() - alongM);
    return toLeftM <= toRightM ? left : right;
  }

  private static boolean runsAt(SeamLine seam, double upM) {
    return seam.fromUpM() - SAME_M <= upM && upM <= seam.toUpM() + SAME_M;
  }

  private static int firstAtOrAfter(double[] sorted, double value) {
    int found = Arrays.binarySearch(sorted, value);
    while (found > 0 && sorted[found - 1] == value) {
      found--;
    }
    return found >= 0 ? found : -found - 1;
  }
}
