package clampwise.facts.layout;

import clampwise.calc.Snap;
import clampwise.job.ModuleType.ClampZone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Chooses seams for the clamps of one module edge.
 *
 * <p>The row of the clamp-zone table with the highest rating that has a seam in both halves is
 * used, and in each half the seam nearest to the middle of its zone, of those that leave no longer
 * overhang than the manual states if there are such. If no row has, the seams nearest to the widest
 * zone are taken, so that a review can say what is wrong with them. A module without a clamp-zone
 * table is held where its overhangs are just what the spans between the clamps bear.
 */
final class SeamChoice {

  private final PlacedModule module;
  private final ClampZones zones;
  private final List<SeamLine> crossing;
  private final EdgeRules rules;

  /**
   * A choice for one edge.
   *
   * @param crossing the seams that cross the edge, left to right
   */
  SeamChoice(PlacedModule module, ClampZones zones, List<SeamLine> crossing, EdgeRules rules) {
    this.rules = rules;
    this.module = module;
    this.zones = zones;
    this.crossing = crossing;
  }

  List<SeamLine> choose(int clamps) {
    if (clamps == 1) {
      return nearest(crossing.stream(), module.alongM() / 2).stream().toList();
    }
    List<SeamLine> ends = clamps == 0 ? List.of() : ends(clamps);
    return clamps > 2 && ends.size() == 2 ? withBetween(ends, clamps - 2) : ends;
  }

  private List<SeamLine> ends(int clamps) {
    return zones.rows().stream()
        .flatMap(row -> heldBy(row).stream())
        .findFirst()
        .orElseGet(
            () ->
                nearBy(
                    zones
                        .widest()
                        .map(SeamChoice::middleM)
                        .orElseGet(() -> rules.fromCornerM(module.alongM(), clamps))));
  }

  private Optional<List<SeamLine>> heldBy(ClampZone row) {
    Predicate<SeamLine> held = seam -> ClampZones.holds(row, fromCornerM(seam));
    List<SeamLine> inZone = crossing.stream().filter(held).toList();
    List<SeamLine> near = inZone.stream().filter(this::isAllowed).toList();
    return both(near, row).or(() -> both(inZone, row));
  }

  private boolean isAllowed(SeamLine seam) {
    return EdgeRules.allows(module.type(), fromCornerM(seam));
  }

  private Optional<List<SeamLine>> both(List<SeamLine> among, ClampZone row) {
    List<SeamLine> pair = pair(among, middleM(row));
    return pair.size() == 2 ? Optional.of(pair) : Optional.empty();
  }

  private List<SeamLine> nearBy(double fromCornerM) {
    return pair(crossing, fromCornerM);
  }

  private List<SeamLine> pair(List<SeamLine> among, double fromCornerM) {
    Optional<SeamLine> left = nearest(among.stream().filter(this::isLeft), fromCornerM);
    Optional<SeamLine> right =
        nearest(among.stream().filter(seam -> !isLeft(seam)), module.alongM() - fromCornerM);
    return Stream.concat(left.stream(), right.stream()).toList();
  }

  private List<SeamLine> withBetween(List<SeamLine> ends, int between) {
    List<SeamLine> chosen = new ArrayList<>(ends);
    double startM = fromLeftM(ends.get(0));
    double stepM = (fromLeftM(ends.get(1)) - startM) / (between + 1);
    for (int n = 1; n <= between; n++) {
      nearest(crossing.stream().filter(seam -> !chosen.contains(seam)), startM + n * stepM)
          .ifPresent(chosen::add);
    }
    return chosen;
  }

  private Optional<SeamLine> nearest(Stream<SeamLine> among, double fromLeftM) {
    return among.min(
        Comparator.comparingDouble((SeamLine seam) -> Snap.m(Math.abs(fromLeftM(seam) - fromLeftM)))
            .thenComparingDouble(this::fromCornerM));
  }

  private boolean isLeft(SeamLine seam) {
    return Snap.m(fromLeftM(seam)) <= Snap.m(module.alongM() / 2);
  }

  private double fromLeftM(SeamLine seam) {
    return seam.alongM() - module.leftM();
  }

  private double fromCornerM(SeamLine seam) {
    return Snap.m(Math.min(fromLeftM(seam), module.alongM() - fromLeftM(seam)));
  }

  private static double middleM(ClampZone row) {
    return (row.zone().min().m() + row.zone().max().m()) / 2;
  }
}
