package clampwise.facts.takeoff;

import clampwise.facts.layout.Layout;
import clampwise.facts.roof.Shown;
import clampwise.units.Unit;
import clampwise.units.Units;

/**
 * The units in which a designer reads what is computed of an order: those of the system in which
 * the roof was measured.
 *
 * @param imperial whether that is feet and pounds
 */
record ShownUnits(boolean imperial) {

  static ShownUnits of(Layout layout) {
    return new ShownUnits(
        layout.planes().stream().findFirst().filter(plane -> Shown.isImperial(plane)).isPresent());
  }

  Unit mass() {
    return imperial ? Units.POUND : Units.KILOGRAM;
  }

  Unit area() {
    return imperial ? Units.SQUARE_FOOT : Units.SQUARE_METRE;
  }

  /** Of times of work: a day's work in hours, pieces of it in minutes. */
  static Unit time(double seconds) {
    return seconds < Units.HOUR.factor() ? Units.MINUTE : Units.HOUR;
  }
}
