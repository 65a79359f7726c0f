package clampwise.facts.movement;

import clampwise.calc.Snap;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import java.util.List;
import java.util.Optional;

/**
 * Modules of one column without a gap in the rows: their mid clamps hold them together.
 *
 * @param count how many they are
 */
record Stack(PlacedModule lowest, PlacedModule highest, int count) {

  /** The longest stack of a field, the first of several; empty where the field has no modules. */
  static Optional<Stack> longest(FieldLayout field) {
    List<PlacedModule> modules = field.modules();
    Optional<Stack> longest = Optional.empty();
    int first = 0;
    for (int i = 1; i <= modules.size(); i++) {
      if (i == modules.size() || !isAbove(modules.get(i), modules.get(i - 1))) {
        Stack stack = new Stack(modules.get(first), modules.get(i - 1), i - first);
        longest =
            longest
                .filter(other -> other.lengthM() >= stack.lengthM())
                .or(() -> Optional.of(stack));
        first = i;
      }
    }
    return longest;
  }

  private static boolean isAbove(PlacedModule module, PlacedModule below) {
    return module.column() == below.column() && module.row() == below.row() + 1;
  }

  /** Length from the lower edge of the lowest to the upper edge of the highest [m]. */
  double lengthM() {
    return Snap.m(highest.topM() - lowest.bottomM());
  }
}
