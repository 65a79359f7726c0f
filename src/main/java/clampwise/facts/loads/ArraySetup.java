package clampwise.facts.loads;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.ArraySize;
import clampwise.calc.wind.ExposedEdge;
import clampwise.calc.wind.PanelReach;
import clampwise.calc.wind.PanelSetup;
import clampwise.calc.wind.PanelSide;
import clampwise.calc.wind.WindCode;
import clampwise.facts.layout.EdgeDistance;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.roof.ArraySlope;
import clampwise.facts.roof.TopHeight;
import clampwise.job.Loads;
import clampwise.job.Plane.EdgeKind;
import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Slope;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** How the array of a field lies on its roof, and which of its modules stand at exposed edges. */
final class ArraySetup {

  private static final Set<EdgeKind> KINDS =
      EnumSet.of(EdgeKind.EAVE, EdgeKind.RIDGE, EdgeKind.RAKE, EdgeKind.HIP);

  private static final Source GIVEN = Source.of("given", "", "as given");

  private final PanelSetup panel;
  private final ArraySides sides;
  private final WindCode code;
  private final double topHeightM;
  private final double heightM;
  private final Optional<Double> written;
  private final Map<Side, Double> factors = new HashMap<>();

  private record Side(PanelSide side, double lengthM) {}

  private ArraySetup(FieldSite asked, WindCode code, double heightM) {
    this.code = code;
    this.heightM = heightM;
    this.topHeightM = TopHeight.of(asked.field()).orElseThrow().m();
    this.written = asked.wind(Loads.WindReading::edgeFactor).map(Factor::value);
    this.sides =
        new ArraySides(
            asked.onPlane().modules(),
            new RoofReach(asked.plane(), asked.roof().shape()),
            PanelReach.of(code, topHeightM));
    this.panel = panel(asked);
  }

  /** The array of a field whose height above the roof is known. */
  static ArraySetup of(FieldSite asked, WindCode code, double heightM) {
    return new ArraySetup(asked, code, heightM);
  }

  PanelSetup panel() {
    return panel;
  }

  /** Factor on the uplift of a module: the largest over the four sides of its array. */
  double edgeFactor(PlacedModule module) {
    return written.orElseGet(
        () ->
            sides.of(module).stream()
                .mapToDouble(side -> factor(side, Math.max(module.alongM(), module.upM())))
                .max()
                .orElse(1));
  }

  /** Writes why the uplift of a module has its factor: the side of its array that decides. */
  void showEdgeFactor(PlacedModule module, Work work) {
    if (written.isPresent()) {
      Term factor = Term.number("gamma_E", "array edge factor", written.get());
      work.write(Line.given(factor, GIVEN, "stated assumption of the job"));
      return;
    }
    double lengthM = Math.max(module.alongM(), module.upM());
    sides.of(module).stream()
        .max(Comparator.comparingDouble(side -> factor(side, lengthM)))
        .ifPresent(side -> ExposedEdge.of(code, side, size(lengthM), work));
  }

  /** Why a module takes its edge factor, in words. */
  String exposure(PlacedModule module, Measure measure) {
    Work work = new Work(measure);
    showEdgeFactor(module, work);
    return work.lines().isEmpty() ? "" : work.lines().get(work.lines().size() - 1).note();
  }

  private double factor(PanelSide side, double lengthM) {
    return factors.computeIfAbsent(
        new Side(side, lengthM),
        key -> ExposedEdge.of(code, side, size(lengthM), Work.unread()).factor());
  }

  private ArraySize size(double lengthM) {
    return new ArraySize(topHeightM, lengthM, heightM);
  }

  private PanelSetup panel(FieldSite asked) {
    FieldLayout field = asked.field();
    return new PanelSetup(
        Optional.of(topHeightM),
        ArraySlope.of(field).map(Slope::rad),
        optional(gapM(field)),
        optional(freeM(field)),
        optional(
            field.modules().stream()
                .mapToDouble(module -> Math.max(module.alongM(), module.upM()))
                .max()),
        optional(edgeDistanceM(asked)));
  }

  /** How far no other module was found around a module on its own. */
  private OptionalDouble freeM(FieldLayout field) {
    return field.modules().size() == 1 ? OptionalDouble.of(sides.lookM()) : OptionalDouble.empty();
  }

  /** Least gap between modules; a module on its own may have those of other fields beside it. */
  private OptionalDouble gapM(FieldLayout field) {
    List<PlacedModule> modules = field.modules();
    if (modules.size() == 1) {
      return sides.nearestM(modules.get(0));
    }
    boolean columns = modules.stream().anyMatch(module -> module.column() > 1);
    boolean rows = modules.stream().anyMatch(module -> module.row() > 1);
    return DoubleStream.concat(
            columns ? DoubleStream.of(field.columnGapM()) : DoubleStream.empty(),
            rows ? DoubleStream.of(field.rowGapM()) : DoubleStream.empty())
        .min();
  }

  /** Least distance of the field from those edges of the roof that the method names. */
  private static OptionalDouble edgeDistanceM(FieldSite asked) {
    return outermost(asked.field().modules())
        .flatMap(module -> EdgeDistance.of(asked.plane(), module).stream())
        .filter(distance -> KINDS.contains(distance.edge().kind()))
        .mapToDouble(EdgeDistance::inPlaneM)
        .min();
  }

  /** Modules with no neighbour in their column above or below, or at either end of their row. */
  private static Stream<PlacedModule> outermost(List<PlacedModule> modules) {
    Set<Long> taken = new java.util.HashSet<>();
    modules.forEach(module -> taken.add(cell(module.column(), module.row())));
    return modules.stream()
        .filter(
            module ->
                !(taken.contains(cell(module.column() - 1, module.row()))
                    && taken.contains(cell(module.column() + 1, module.row()))
                    && taken.contains(cell(module.column(), module.row() - 1))
                    && taken.contains(cell(module.column(), module.row() + 1))));
  }

  private static long cell(int column, int row) {
    return ((long) column << Integer.SIZE) + row;
  }

  private static Optional<Double> optional(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }
}
