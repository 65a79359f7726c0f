package clampwise.facts.weight;

import clampwise.calc.Snap;
import clampwise.facts.layout.FieldLayout;
import clampwise.job.Quantity.Length;
import clampwise.job.RoofAttachment;
import clampwise.job.Unreadable;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The clear space between roof and modules.
 *
 * @param m height of the modules' underside above the roof [m]
 */
public record ClearSpace(double m, Unit unit) {

  /** The space as the field's own height leaves it, else as its seam clamp or bracket sets it. */
  public static Optional<ClearSpace> of(FieldLayout field) {
    Optional<Length> frame = field.type().frameHeight();
    Optional<ClearSpace> own =
        field
            .field()
            .topHeight()
            .flatMap(top -> frame.map(f -> new ClearSpace(Snap.m(top.m() - f.m()), top.unit())));
    return own.or(
        () ->
            field
                .part()
                .flatMap(RoofAttachment::standoff)
                .map(standoff -> new ClearSpace(Snap.m(standoff.m()), standoff.unit())));
  }

  public static String unknown(FieldLayout field, Unreadable unreadable) {
    String what = "how far above the roof the modules of field " + field.name() + " stand";
    boolean frame = unreadable.touches("modules", field.typeName(), "frame-height");
    return frame
        ? what + " could not be read"
        : unreadable.missing(what, "fields", field.name(), "top-height");
  }
}
