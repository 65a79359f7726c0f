package clampwise.facts.roof;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.job.Quantity.Slope;
import clampwise.job.Text;
import clampwise.job.Unreadable;
import clampwise.units.Units;
import java.util.Optional;

/**
 * Slope between the modules of a field and the roof. A field without a written tilt whose
 * attachments are all of one part stands off everywhere alike and is parallel.
 */
public final class ArraySlope {

  private ArraySlope() {}

  /** The slope against the roof, if it is known. */
  public static Optional<Slope> of(FieldLayout field) {
    Slope parallel = new Slope(0, Units.DEGREE, field.at());
    return field.field().tilt().or(() -> Optional.of(parallel).filter(p -> isOfOnePart(field)));
  }

  /** What is missing where it is not known. */
  public static String unknown(FieldLayout field, Unreadable unreadable) {
    String what = "the tilt of field " + field.name() + " against the roof";
    return unreadable.missing(what, "fields", field.name(), "tilt");
  }

  private static boolean isOfOnePart(FieldLayout field) {
    long parts =
        field.attachments().stream()
            .map(Attachment::part)
            .map(part -> part.map(Text::value))
            .distinct()
            .count();
    return parts == 1 && field.attachments().get(0).part().isPresent();
  }
}
