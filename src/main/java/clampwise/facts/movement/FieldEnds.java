package clampwise.facts.movement;

import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a field begins and ends.
 *
 * @param leftM its left end [m along]
 * @param rightM its right end [m along]
 * @param bottomM its lower end [m up]
 * @param topM its upper end [m up]
 */
record FieldEnds(FieldLayout field, double leftM, double rightM, double bottomM, double topM) {

  private static FieldEnds of(FieldLayout field) {
    double leftM = Double.POSITIVE_INFINITY;
    double rightM = Double.NEGATIVE_INFINITY;
    double bottomM = Double.POSITIVE_INFINITY;
    double topM = Double.NEGATIVE_INFINITY;
    for (PlacedModule module : field.modules()) {
      leftM = Math.min(leftM, module.leftM());
      rightM = Math.max(rightM, module.rightM());
      bottomM = Math.min(bottomM, module.bottomM());
      topM = Math.max(topM, module.topM());
    }
    return new FieldEnds(field, leftM, rightM, bottomM, topM);
  }

  /** The ends of all fields; none are needed where there is one field. */
  static List<FieldEnds> all(List<FieldLayout> fields) {
    List<FieldEnds> ends = new ArrayList<>();
    if (fields.size() > 1) {
      fields.forEach(field -> ends.add(of(field)));
    }
    return ends;
  }

  /** The fields that go on where others end, with those others; mostly there are none. */
  static List<FieldLayout> touching(List<FieldEnds> all) {
    List<FieldLayout> touching = new ArrayList<>();
    for (FieldEnds one : all) {
      for (FieldEnds other : all) {
        if (!one.isOf(other.field()) && (one.leadsTo(other) || other.leadsTo(one))) {
          touching.add(one.field());
          break;
        }
      }
    }
    return touching;
  }

  private boolean isOf(FieldLayout other) {
    return field.name().equals(other.name());
  }

  private boolean leadsTo(FieldEnds next) {
    boolean along = Abutting.touch(rightM, next.leftM);
    boolean up = Abutting.touch(topM, next.bottomM);
    return along && Abutting.overlap(bottomM, topM, next.bottomM, next.topM)
        || up && Abutting.overlap(leftM, rightM, next.leftM, next.rightM);
  }
}
