package clampwise.facts.movement;

import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import java.util.List;
import java.util.Optional;

/** Follows a run of frames from the end of a field into others whose frames touch it. */
final class Abutting {

  private static final double TOUCH_M = 1e-6;

  private final List<FieldLayout> fields;

  Abutting(List<FieldLayout> fields) {
    this.fields = fields;
  }

  static boolean touch(double endM, double startM) {
    return Math.abs(startM - endM) <= TOUCH_M;
  }

  /** Whether two stretches share more than an end. */
  static boolean overlap(double startM, double endM, double otherStartM, double otherEndM) {
    return Math.min(endM, otherEndM) - Math.max(startM, otherStartM) > TOUCH_M;
  }

  /** The last module of a run that goes on along the eave behind a module. */
  PlacedModule lastAlong(PlacedModule end) {
    PlacedModule last = end;
    Optional<PlacedModule> next = beside(last);
    while (next.isPresent()) {
      last = next.get();
      next = beside(last);
    }
    return last;
  }

  /** The last module of a run that goes on up the slope above a module. */
  PlacedModule lastUp(PlacedModule end) {
    PlacedModule last = end;
    Optional<PlacedModule> next = above(last);
    while (next.isPresent()) {
      last = next.get();
      next = above(last);
    }
    return last;
  }

  private Optional<PlacedModule> beside(PlacedModule end) {
    for (FieldLayout field : fields) {
      for (PlacedModule module : field.modules()) {
        boolean level = overlap(module.bottomM(), module.topM(), end.bottomM(), end.topM());
        if (level && touch(end.rightM(), module.leftM())) {
          return Optional.of(module);
        }
      }
    }
    return Optional.empty();
  }

  /** In its own field the mid clamp ties it to the next one; the frames of two fields touch. */
  private Optional<PlacedModule> above(PlacedModule end) {
    for (FieldLayout field : fields) {
      boolean own = field.name().equals(end.field());
      for (PlacedModule module : field.modules()) {
        boolean tied = own && module.column() == end.column() && module.row() == end.row() + 1;
        boolean inLine = overlap(module.leftM(), module.rightM(), end.leftM(), end.rightM());
        if (tied || !own && inLine && touch(end.topM(), module.bottomM())) {
          return Optional.of(module);
        }
      }
    }
    return Optional.empty();
  }
}
