package clampwise.facts.roof;

import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Quantity;
import clampwise.job.Size;
import clampwise.units.Unit;

/** Finds the unit a designer thinks in, for lengths that are computed rather than written. */
public final class Shown {

  private Shown() {}

  /** The unit in which a field was set out. */
  public static Unit of(FieldLayout field) {
    return field
        .field()
        .block()
        .map(block -> block.at().along().unit())
        .or(
            () ->
                field.field().columns().stream()
                    .flatMap(column -> column.at().stream())
                    .map(spot -> spot.along().unit())
                    .findFirst())
        .orElse(Unit.MILLIMETRE);
  }

  /** The unit in which a plane was measured. */
  public static Unit of(PlaneLayout plane) {
    return plane
        .plane()
        .size()
        .map(Size::along)
        .map(Quantity::unit)
        .or(
            () ->
                plane.plane().outline().stream()
                    .map(corner -> corner.at().along().unit())
                    .findFirst())
        .orElse(Unit.MILLIMETRE);
  }

  /** Whether a plane was measured in feet or inches. */
  public static boolean isImperial(PlaneLayout plane) {
    Unit unit = of(plane);
    return unit.equals(Unit.FOOT) || unit.equals(Unit.INCH);
  }

  /** The unit for a short length next to a long one: millimetres beside metres. */
  public static Unit small(Unit unit) {
    return unit.equals(Unit.METRE) || unit.equals(Unit.CENTIMETRE) ? Unit.MILLIMETRE : unit;
  }
}
