package clampwise.facts.movement;

import clampwise.calc.thermal.Expansion;
import clampwise.calc.thermal.Swing;
import clampwise.catalogue.ExpansionTable;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Quantity.Offset;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.locationtech.jts.geom.Envelope;

/**
 * Two frames of one plane that a jumper joins, the left one first.
 *
 * @param moving the plane they lie on
 */
record JumperPair(MovingPlane moving, PlacedModule left, PlacedModule right) {

  private static final double TOUCH_M = 1e-6;

  static JumperPair of(MovingPlane moving, PlacedModule one, PlacedModule other) {
    return one.leftM() <= other.leftM()
        ? new JumperPair(moving, one, other)
        : new JumperPair(moving, other, one);
  }

  /** An expansion joint of the building between the two frames. */
  Optional<Double> joint() {
    List<Offset> joints = moving.plane().plane().expansionJoints().orElse(List.of());
    return joints.stream()
        .map(Offset::m)
        .filter(m -> left.rightM() <= m + TOUCH_M && m <= right.leftM() + TOUCH_M)
        .findFirst();
  }

  /**
   * How far the two move against each other: frames against the roof from middle to middle, or,
   * over an expansion joint, the halves of the building's sections on both its sides.
   */
  double movementM(ExpansionTable.Pair metals, Swing swing) {
    return joint()
        .map(m -> new Expansion(sectionsM(m) / 2, swing).growthM(moving.structure()))
        .orElseGet(() -> new Expansion(apartM(), swing).differenceM(metals.one(), metals.other()));
  }

  /** Middle to middle. */
  private double apartM() {
    double alongM = right.leftM() + right.alongM() / 2 - left.leftM() - left.alongM() / 2;
    double upM = right.bottomM() + right.upM() / 2 - left.bottomM() - left.upM() / 2;
    return Math.hypot(alongM, upM);
  }

  /** Length of the two sections that meet at a joint. */
  private double sectionsM(double jointM) {
    TreeSet<Double> ends = new TreeSet<>();
    moving.plane().plane().expansionJoints().orElse(List.of()).forEach(o -> ends.add(o.m()));
    Envelope box = moving.plane().outline().orElseThrow().getEnvelopeInternal();
    ends.add(box.getMinX());
    ends.add(box.getMaxX());
    return Optional.ofNullable(ends.higher(jointM)).orElse(jointM)
        - Optional.ofNullable(ends.lower(jointM)).orElse(jointM);
  }
}
