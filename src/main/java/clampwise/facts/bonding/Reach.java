package clampwise.facts.bonding;

import clampwise.calc.Snap;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Bonding.Jumper;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** How far jumpers have to reach, and whether they do. */
final class Reach {

  private final BondParts parts;
  private final Map<String, String> planeOf = new HashMap<>();

  Reach(Layout layout, BondParts parts) {
    this.parts = parts;
    for (PlaneLayout plane : layout.planes()) {
      for (FieldLayout field : plane.fields()) {
        planeOf.put(field.name(), plane.name());
      }
    }
  }

  /** From frame to frame; over the edge of a plane it is not known. */
  OptionalDouble gapM(Joint joint) {
    String plane = planeOf.get(joint.one().field());
    return plane != null && plane.equals(planeOf.get(joint.other().field()))
        ? OptionalDouble.of(Snap.m(joint.one().gapM(joint.other())))
        : OptionalDouble.empty();
  }

  /** Whether a jumper of known length does not bridge a known gap. */
  boolean isShort(Jumper jumper, Joint joint) {
    OptionalDouble gapM = gapM(joint);
    return gapM.isPresent()
        && parts
            .lengthOf(jumper)
            .filter(length -> Snap.m(length.m()) < gapM.getAsDouble())
            .isPresent();
  }
}
