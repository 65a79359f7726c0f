package clampwise.facts.layout;

import clampwise.calc.Snap;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * Finds where the lines of a field lie up the slope.
 *
 * @param lines places of all lines, ascending [m]
 * @param lowerM where the line of each module's lower edge should lie: the middle of the gap below
 *     it, or the edge if it has no neighbour there [m]
 * @param upperM the same of its upper edge [m]
 */
record LinePlaces(double[] lines, double[] lowerM, double[] upperM) {

  /** Lines nearer than this are one line. */
  static final double SAME_LINE_M = 0.001;

  /**
   * The lines of a field.
   *
   * @param modules by column, then by row
   */
  static LinePlaces of(List<PlacedModule> modules, double rowGapM) {
    double[] lowerM = modules.stream().mapToDouble(PlacedModule::bottomM).toArray();
    double[] upperM = modules.stream().mapToDouble(m -> Snap.m(m.topM())).toArray();
    TreeSet<Double> inGaps = new TreeSet<>();
    for (int i = 1; i < modules.size(); i++) {
      if (follows(modules.get(i - 1), modules.get(i))) {
        double middleM = Snap.m((upperM[i - 1] + lowerM[i]) / 2);
        upperM[i - 1] = middleM;
        lowerM[i] = middleM;
        inGaps.add(middleM);
      }
    }
    double[] lines = merged(inGaps, union(lowerM, upperM), rowGapM / 2 + SAME_LINE_M);
    return new LinePlaces(lines, lowerM, upperM);
  }

  private static boolean follows(PlacedModule lower, PlacedModule upper) {
    return lower.column() == upper.column() && lower.row() + 1 == upper.row();
  }

  private static TreeSet<Double> union(double[] lowerM, double[] upperM) {
    return DoubleStream.concat(Arrays.stream(lowerM), Arrays.stream(upperM))
        .boxed()
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Lines in gaps, and lines at those outer edges that border no such gap. */
  private static double[] merged(TreeSet<Double> inGaps, TreeSet<Double> all, double reachM) {
    TreeSet<Double> lines = apart(inGaps);
    all.removeIf(edgeM -> !lines.subSet(edgeM - reachM, true, edgeM + reachM, true).isEmpty());
    lines.addAll(apart(all));
    return lines.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static TreeSet<Double> apart(Collection<Double> ascending) {
    TreeSet<Double> kept = new TreeSet<>();
    for (double placeM : ascending) {
      if (kept.isEmpty() || placeM - kept.last() > SAME_LINE_M) {
        kept.add(placeM);
      }
    }
    return kept;
  }
}
