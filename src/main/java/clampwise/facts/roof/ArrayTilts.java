package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Quantity.Slope;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/** Holds the slope between modules and roof against the wind method's. */
final class ArrayTilts implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    Limit most = limits.get("array-tilt-most");
    WindMethod.each(
        layout,
        (plane, field) -> ask(plane, field, most, answers),
        (plane, field) -> missing(field, WindMethod.unknown(layout), answers));
  }

  private static void ask(PlaneLayout plane, FieldLayout field, Limit most, Answers answers) {
    ArraySlope.of(field)
        .ifPresentOrElse(
            tilt -> answers.add(fact(field, tilt, most)),
            () -> missing(field, ArraySlope.unknown(field, plane.reading().unreadable()), answers));
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
