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

/** Finds where a straight corridor up a plane costs the fewest modules. */
final class Clearing {

  private static final double TOUCH_M = 1e-6;

  private final List<PlacedModule> modules;
  private final double widthM;
  private final double[] lefts;
  private final double[] rights;

  private Clearing(List<PlacedModule> modules, double widthM) {
    this.modules = modules;
    this.widthM = widthM;
    this.lefts = sorted(PlacedModule::leftM);
    this.rights = sorted(PlacedModule::rightM);
  }

  private double[] sorted(ToDoubleFunction<PlacedModule> side) {
    return modules.stream().mapToDouble(side).sorted().toArray();
  }

  /** The modules to leave out; empty where no straight corridor leads up the plane. */
  static Optional<Dropped> of(PlaneLayout plane, double widthM) {
    List<PlacedModule> modules = Access.modules(plane);
    return Way.upTo(plane).stream()
        .map(way -> shared(way.from(), way.to()))
        .filter(range -> range.getWidth() + TOUCH_M >= widthM)
        .findFirst()
        .map(range -> new Clearing(modules, widthM).fewest(range))
        .map(drop -> new Dropped(plane, drop));
  }

  /** The modules to leave out for a corridor along either side of a plane. */
  static Optional<Dropped> ofBothSides(PlaneLayout plane, double widthM) {
    return Way.upTo(plane).stream()
        .map(way -> shared(way.from(), way.to()))
        .filter(range -> range.getWidth() + TOUCH_M >= 2 * widthM)
        .findFirst()
        .map(range -> new Dropped(plane, beside(Access.modules(plane), range, widthM)));
  }

  private static List<PlacedModule> beside(
      List<PlacedModule> modules, Envelope range, double widthM) {
    Clearing clearing = new Clearing(modules, widthM);
    double rightM = range.getMaxX() - widthM;
    return modules.stream()
        .filter(m -> clearing.isIn(m, range.getMinX()) || clearing.isIn(m, rightM))
        .toList();
  }

  /** Where start and end lie above one another; the height of the result means nothing. */
  private static Envelope shared(List<LineSegment> from, List<LineSegment> to) {
    Envelope start = along(from);
    return start.intersection(along(to));
  }

  private static Envelope along(List<LineSegment> edges) {
    Envelope all = new Envelope();
    for (LineSegment edge : edges) {
      all.expandToInclude(edge.p0.x, 0);
      all.expandToInclude(edge.p1.x, 0);
    }
    return all;
  }

  private List<PlacedModule> fewest(Envelope range) {
    double lowM = range.getMinX();
    double highM = range.getMaxX() - widthM;
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
            Arrays.stream(rights), Arrays.stream(lefts).map(leftM -> leftM - widthM));
    return DoubleStream.concat(DoubleStream.of(lowM, highM), besideModules)
        .filter(fromM -> lowM <= fromM && fromM <= highM)
        .toArray();
  }

  private int count(double fromM) {
    int before = upTo(rights, fromM + TOUCH_M);
    int startBefore = upTo(lefts, fromM + widthM - TOUCH_M);
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
    return module.rightM() > fromM + TOUCH_M && module.leftM() < fromM + widthM - TOUCH_M;
  }
}
