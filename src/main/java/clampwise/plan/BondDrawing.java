package clampwise.plan;

import clampwise.facts.bonding.BondingMap;
import clampwise.facts.bonding.BondingMap.Pair;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.plan.Drawn.Run;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** How the frames of a plane hang together: joints, jumpers, lugs, and what no lug reaches. */
final class BondDrawing {

  private static final double LEAST_MODULE_MM = 3;
  private static final double END_MM = 0.5;

  private final BondingMap bonding;
  private final Frame frame;
  private final Canvas canvas;

  BondDrawing(BondingMap bonding, Frame frame, Canvas canvas) {
    this.bonding = bonding;
    this.frame = frame;
    this.canvas = canvas;
  }

  void draw(PlaneLayout plane) {
    List<PlacedModule> modules = new ArrayList<>();
    for (FieldLayout field : plane.fields()) {
      modules.addAll(field.modules());
    }
    if (modules.isEmpty() || frame.mm(modules.get(0).alongM()) < LEAST_MODULE_MM) {
      return;
    }
    canvas.layer("bonding");
    Set<String> here = new HashSet<>();
    modules.forEach(module -> here.add(module.name()));
    modules.stream().filter(m -> bonding.islands().contains(m.name())).forEach(this::island);
    canvas.runs(Style.BOND, runs(bonding.clamped(), here), About.NOTHING);
    bonding.jumpers().stream().filter(pair -> isHere(pair, here)).forEach(this::jumper);
    bonding.lugs().stream().filter(lug -> here.contains(lug.name())).forEach(this::lug);
  }

  private List<Run> runs(List<Pair> pairs, Set<String> here) {
    return pairs.stream()
        .filter(pair -> isHere(pair, here))
        .map(pair -> new Run(List.of(low(pair.one()), low(pair.other())), false))
        .toList();
  }

  private static boolean isHere(Pair pair, Set<String> here) {
    return here.contains(pair.one().name()) && here.contains(pair.other().name());
  }

  /** Paths run through the lower third of frames, clear of their names. */
  private Point low(PlacedModule module) {
    return frame.at((module.leftM() + module.rightM()) / 2, module.bottomM() + module.upM() * 0.28);
  }

  private void island(PlacedModule module) {
    double apartM = frame.metres(1.6);
    canvas.shape(
        Style.ISLAND,
        Hatching.of(Spots.SHAPES.toGeometry(Spots.box(module)), apartM, false),
        frame);
  }

  private void jumper(Pair pair) {
    Point one = low(pair.one());
    Point other = low(pair.other());
    canvas.line(Style.JUMPER, one, other);
    canvas.add(new Drawn.Disc(Style.JUMPER, one, END_MM, About.NOTHING));
    canvas.add(new Drawn.Disc(Style.JUMPER, other, END_MM, About.NOTHING));
  }

  private void lug(PlacedModule module) {
    canvas.runs(Style.LUG, earth(low(module).plus(1.6, -0.8)), About.NOTHING);
  }

  /** The usual sign of a conductor to earth, below a point. */
  static List<Run> earth(Point top) {
    List<Run> runs = new ArrayList<>();
    runs.add(new Run(List.of(top, top.plus(0, 1.2)), false));
    for (int i = 0; i < 3; i++) {
      double half = 1.1 - 0.35 * i;
      double down = 1.2 + 0.5 * i;
      runs.add(new Run(List.of(top.plus(-half, down), top.plus(half, down)), false));
    }
    return runs;
  }
}
