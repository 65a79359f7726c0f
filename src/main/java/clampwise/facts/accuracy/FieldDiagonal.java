package clampwise.facts.accuracy;

import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import java.util.OptionalDouble;

/** From the outer corner of a field to the one across, on the layout. */
final class FieldDiagonal {

  private static final double SAME_M = 1e-6;

  private double leftM = Double.POSITIVE_INFINITY;
  private double rightM = Double.NEGATIVE_INFINITY;
  private double bottomM = Double.POSITIVE_INFINITY;
  private double topM = Double.NEGATIVE_INFINITY;
  private boolean[] corners = new boolean[4];

  private FieldDiagonal(FieldLayout field) {
    for (PlacedModule module : field.modules()) {
      leftM = Math.min(leftM, module.leftM());
      rightM = Math.max(rightM, module.rightM());
      bottomM = Math.min(bottomM, module.bottomM());
      topM = Math.max(topM, module.topM());
    }
    field.modules().forEach(this::note);
  }

  /** Of a field that has a module at each of its four corners. */
  static OptionalDouble of(FieldLayout field) {
    FieldDiagonal box = new FieldDiagonal(field);
    for (boolean corner : box.corners) {
      if (!corner) {
        return OptionalDouble.empty();
      }
    }
    return OptionalDouble.of(Math.hypot(box.rightM - box.leftM, box.topM - box.bottomM));
  }

  private void note(PlacedModule module) {
    boolean left = same(module.leftM(), leftM);
    boolean right = same(module.rightM(), rightM);
    boolean bottom = same(module.bottomM(), bottomM);
    boolean top = same(module.topM(), topM);
    corners[0] |= left && bottom;
    corners[1] |= right && bottom;
    corners[2] |= left && top;
    corners[3] |= right && top;
  }

  private static boolean same(double oneM, double otherM) {
    return Math.abs(oneM - otherM) < SAME_M;
  }
}
