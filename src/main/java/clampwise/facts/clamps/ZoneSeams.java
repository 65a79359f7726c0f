package clampwise.facts.clamps;

import clampwise.calc.ClampedEdge;
import clampwise.calc.Interval;
import clampwise.calc.Intervals;
import clampwise.calc.SeamPositions;
import clampwise.calc.Snap;
import clampwise.facts.layout.Grip;
import clampwise.facts.layout.Grip.Half;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.SeamLine;
import clampwise.job.Choice;
import clampwise.job.ModuleType;
import clampwise.job.ModuleType.Side;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which seams of a plane fall in the clamp zones of the modules of a field. */
final class ZoneSeams {

  private final FieldCase asked;
  private final SeamRuns runs;
  private final double testFactor;
  private final Map<String, UsableZones> zones = new HashMap<>();

  private ZoneSeams(FieldCase asked) {
    this.asked = asked;
    this.runs = new SeamRuns(asked.plane().seams());
    this.testFactor = asked.limits().get("test-over-design-load").si();
  }

  static ZoneSeams of(FieldCase asked) {
    return new ZoneSeams(asked);
  }

  boolean areKnown() {
    return !asked.plane().seams().isEmpty();
  }

  /** The rows of a module's table that count here. */
  UsableZones zones(PlacedModule module) {
    return zones.computeIfAbsent(
        module.typeName(), name -> zones(module.type(), module.clampedSide()));
  }

  /** What the loads of a module's table are divided by to get design loads. */
  double factor(ModuleType type) {
    return RatedLoads.factor(type, testFactor).orElse(testFactor);
  }

  UsableZones zones(ModuleType type, Side side) {
    return UsableZones.of(type, side, asked.field().field().designLoad(), testFactor);
  }

  /** Why a module's clamp-zone table does not say where it may be clamped, if it does not. */
  Optional<String> unusable(PlacedModule module) {
    String side = Choice.word(module.clampedSide());
    if (module.type().clampZones().isEmpty()) {
      return Optional.of(noTable(asked, module));
    }
    if (UsableZones.ofSide(module).isEmpty()) {
      return Optional.of(
          "the clamp-zone table of " + module.typeName() + " has no row for its " + side + " side");
    }
    boolean basisNeeded =
        asked.field().field().designLoad().isPresent() && module.type().loadsAre().isEmpty();
    if (basisNeeded) {
      return Optional.of(noBasis(asked, module));
    }
    return zones(module).isEmpty()
        ? Optional.of(
            ofTable(
                asked,
                module,
                "no row of "
                    + module.typeName()
                    + (" for its " + side + " side carries the design load")))
        : Optional.empty();
  }

  static String noTable(FieldCase asked, PlacedModule module) {
    return ofTable(asked, module, "module " + module.typeName() + " has no clamp-zone table");
  }

  /** Says that a module's table could not be read, or else what it lacks. */
  static String ofTable(FieldCase asked, PlacedModule module, String lacks) {
    String type = module.typeName();
    String table = "the clamp-zone table of module " + type;
    return asked.unreadable().unwritten(lacks, table, "modules", type, "clamp-zones");
  }

  static String noBasis(FieldCase asked, PlacedModule module) {
    String type = module.typeName();
    return asked
        .unreadable()
        .missing(
            "whether the loads of module " + type + " are for design or test",
            "modules",
            type,
            "loads-are");
  }

  /** The edge of a module with each of its separate clamp zones. */
  List<ClampedEdge> edges(PlacedModule module) {
    return edges(zones(module), module.alongM());
  }

  static List<ClampedEdge> edges(UsableZones zones, double alongM) {
    List<Interval> written =
        zones.rows().stream()
            .map(row -> new Interval(Snap.m(row.zone().min().m()), Snap.m(row.zone().max().m())))
            .toList();
    return new Intervals(written)
        .parts().stream().map(zone -> new ClampedEdge(alongM, zone)).toList();
  }

  /** Seams that cross both supported edges of a module. */
  SeamPositions seams(PlacedModule module) {
    return runs.over(module.bottomM(), module.topM());
  }

  /** Whether a seam falls in the zone on both halves of a module's edges. */
  boolean allow(PlacedModule module) {
    SeamPositions seams = seams(module);
    return edges(module).stream().anyMatch(edge -> edge.complies(seams, module.leftM()));
  }

  /** The seam on the same half of the edge that is in the zone and nearest, in words. */
  String better(Grip grip) {
    PlacedModule module = grip.module();
    UsableZones usable = zones(module);
    Unit unit = usable.rows().get(0).zone().min().unit();
    double hereM = module.leftM() + grip.fromLeftM();
    return asked.plane().seams().stream()
        .filter(seam -> half(module, seam) == grip.half())
        .filter(seam -> seam.alongM() >= module.leftM() && seam.alongM() <= module.rightM())
        .filter(seam -> usable.missM(fromCornerM(module, seam)) <= 0)
        .min(Comparator.comparingDouble(seam -> Math.abs(seam.alongM() - hereM)))
        .map(
            seam ->
                "move it to "
                    + seam.name()
                    + ", "
                    + QuantityPrint.text(fromCornerM(module, seam), unit)
                    + " from the corner")
        .orElse("move it into the zone");
  }

  private static Half half(PlacedModule module, SeamLine seam) {
    return seam.alongM() - module.leftM() <= module.alongM() / 2 ? Half.LEFT : Half.RIGHT;
  }

  private static double fromCornerM(PlacedModule module, SeamLine seam) {
    return Snap.m(Math.min(seam.alongM() - module.leftM(), module.rightM() - seam.alongM()));
  }
}
