package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.facts.layout.FieldLayout;
import clampwise.job.Quantity.Length;
import clampwise.job.RoofAttachment;
import clampwise.job.Unreadable;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The height of the modules' upper side above the roof, as written or from standoff and frame.
 *
 * @param m height h2 [m]
 * @param from how it was got
 * @param at the value that decides it
 */
public record TopHeight(double m, String from, Unit unit, Span at) {

  /** The height of a field, if it is known. */
  public static Optional<TopHeight> of(FieldLayout field) {
    return field.field().topHeight().map(TopHeight::written).or(() -> summed(field));
  }

  /** What is missing where the height is not known. */
  public static String unknown(FieldLayout field, Unreadable unreadable) {
    String type = field.typeName();
    return field.type().frameHeight().isEmpty()
        ? unreadable.missing("the frame height of " + type, "modules", type, "frame-height")
        : unreadable.unwritten(
            "neither the top height of field " + field.name() + " nor its standoff is given",
            "the top height of field " + field.name(),
            "fields",
            field.name(),
            "top-height");
  }

  private static TopHeight written(Length height) {
    return new TopHeight(height.m(), "as written", height.unit(), height.at());
  }

  private static Optional<TopHeight> summed(FieldLayout field) {
    Optional<Length> standoff = field.part().flatMap(RoofAttachment::standoff);
    Optional<Length> frame = field.type().frameHeight();
    Span at = field.field().attachment().map(name -> name.at()).orElse(field.at());
    return standoff.flatMap(
        below ->
            frame.map(
                above ->
                    new TopHeight(
                        Snap.m(below.m() + above.m()), "standoff plus frame", above.unit(), at)));
  }
}
