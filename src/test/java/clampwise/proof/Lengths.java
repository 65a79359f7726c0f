package clampwise.proof;

import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import java.util.List;
import java.util.Optional;

/** Reads lengths of a draft in millimetres. */
final class Lengths {
  private static final double MM = 1000;

  private Lengths() {}

  static double mm(String text) {
    if (QuantityText.parse(text, Dimension.LENGTH, Optional.empty())
        instanceof Parsed.Value value) {
      return value.si() * MM;
    }
    throw new IllegalArgumentException(text);
  }

  static double mm(Draft draft, String path) {
    return mm(draft.text(path));
  }

  /** Width and height of a plane: its size, or the box round its outline. */
  static double[] plane(Draft draft, String plane) {
    Optional<Object> size = draft.get("planes." + plane + ".size");
    if (size.isPresent()) {
      String[] sides = ((String) size.get()).split(" x ");
      return new double[] {mm(sides[0]), mm(sides[1])};
    }
    double[] box = {0, 0};
    for (Object corner : Draft.list(draft.get("planes." + plane + ".outline").orElseThrow())) {
      List<Object> at = Draft.list(Draft.mapping(corner).get("at"));
      box[0] = Math.max(box[0], mm((String) at.get(0)));
      box[1] = Math.max(box[1], mm((String) at.get(1)));
    }
    return box;
  }
}
