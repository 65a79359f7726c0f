package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.job.Quantity.Slope;
import clampwise.job.Text;
import clampwise.source.Span;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.Optional;

/**
 * Holds the slope between modules and roof against the wind method's. A field without a written
 * tilt whose attachments are all of one part stands off everywhere alike and is parallel.
 */
final class ArrayTilts implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    Limit most = limits.get("array-tilt-most");
    WindMethod.each(
        layout,
        (plane, field) -> ask(field, most, answers),
        (plane, field) -> missing(field, WindMethod.UNKNOWN, answers));
  }

  private static void ask(FieldLayout field, Limit most, Answers answers) {
    Optional<Slope> tilt = field.field().tilt();
    if (tilt.isPresent()) {
      answers.add(fact(field, tilt.get(), most));
    } else if (isOfOnePart(field)) {
      answers.add(fact(field, new Slope(0, Units.DEGREE, field.at()), most));
    } else {
      String reason = "the tilt of field " + field.name() + " against the roof is not given";
      missing(field, reason, answers);
    }
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

  private static void missing(FieldLayout field, String reason, Answers answers) {
    answers.missing(ArrayTilt.class, RoofSubjects.field(field), reason, field.at());
  }

  private static ArrayTilt fact(FieldLayout field, Slope tilt, Limit most) {
    Unit shown = tilt.unit();
    Span at = tilt.at();
    return new ArrayTilt(
        RoofSubjects.field(field).part("tilt"),
        RoofSubjects.field(field).part("tilt"),
        at,
        shown,
        field.name(),
        tilt.rad(),
        most.si(),
        Optional.of(most));
  }
}
