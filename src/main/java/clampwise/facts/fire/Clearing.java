package clampwise.facts.fire;

import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;

/** Finds where a straight corridor through modules costs the fewest of them. */
final class Clearing {

  private static final double TOUCH_M = 1e-6;

  private final List<PlacedModule> modules;
  private final Axis across;
  private final double widthM;
  private final double[] starts;
  private final double[] ends;

  /**
   * A search for a corridor.
   *
   * @param across the direction in which its width is measured
   */
  Clearing(List<PlacedModule> modules, Axis across, double widthM) {
    this.modules = modules;
    this.across = across;
    this.widthM = widthM;
    this.starts = sorted(across::startM);
    this.ends = sorted(across::endM);
  }

  private double[] sorted(ToDoubleFunction<PlacedModule> side) {
    return modules.stream().mapToDouble(side).sorted().toArray();
  }

  /** The modules to leave out; empty where no straight corridor leads up the plane. */
  static Optional<Dropped> of(PlaneLayout plane, double widthM) {
    List<PlacedModule> modules = Access.modules(plane);
    return range(plane, widthM)
        .map(
            range ->
                new Clearing(modules, Axis.ALONG, widthM)
                    .fewest(range.getMinX(), range.getMaxX() - widthM))
        .map(drop -> new Dropped(plane, drop));
  }

  /** The modules to leave out for a corridor along either side of a plane. */
  static Optional<Dropped> ofBothSides(PlaneLayout plane, double widthM) {
    Clearing clearing = new Clearing(Access.modules(plane), Axis.ALONG, widthM);
    return range(plane, 2 * widthM)
        .map(
            range ->
                Access.modules(plane).stream()
                    .filter(
                        module ->
                            clearing.isIn(module, range.getMinX())
                                || clearing.isIn(module, range.getMaxX() - widthM))
                    .toList())
        .map(drop -> new Dropped(plane, drop));
  }

  /** Where start and end of a way lie above one another; the height of the result means nothing. */
  private static Optional<Envelope> range(PlaneLayout plane, double leastM) {
    return Way.upTo(plane).stream()
        .map(way -> along(way.from()).intersection(along(way.to())))
        .filter(range -> range.getWidth() + TOUCH_M >= leastM)
        .findFirst();
  }

  private static Envelope along(List<LineSegment> edges) {
    Envelope all = new Envelope();
    for (LineSegment edge : edges) {
      all.expandToInclude(edge.p0.x, 0);
      all.expandToInclude(edge.p1.x, 0);
    }
    return all;
  }

  /** The modules in the corridor with the fewest, which begins between two places. */
  List<PlacedModule> fewest(double lowM, double highM) {
    double bestM = lowM;
    for (double fromM : candidates(lowM, highM)) {
      if (count(fromM) < count(bestM)) {
        bestM = fromM;
      }
    }
    double fromM = bestM;
    return modules.stream().filter(module -> isIn(module, fromM)).toList();
  }

  private double[] candidates(double lowM, double highM) {
    DoubleStream besideModules =
        DoubleStream.concat(
            Arrays.stream(ends), Arrays.stream(starts).map(startM -> startM - widthM));
    return DoubleStream.concat(DoubleStream.of(lowM, highM), besideModules)
        .filter(fromM -> lowM <= fromM && fromM <= highM)
        .toArray();
  }

  private int count(double fromM) {
    int before = upTo(ends, fromM + TOUCH_M);
    int startBefore = upTo(starts, fromM + widthM - TOUCH_M);
    return startBefore - before;
  }

  /** How many of some ascending numbers are no larger than a value. */
  private static int upTo(double[] ascending, double value) {
    int low = 0;
    int high = ascending.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (ascending[middle] <= value) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private boolean isIn(PlacedModule module, double fromM) {
    return across.endM(module) > fromM + TOUCH_M
        && across.startM(module) < fromM + widthM - TOUCH_M;
  }
}
