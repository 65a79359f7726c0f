package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import java.util.Optional;

/** Holds the height of each field above the roof against the wind method's. */
final class ArrayHeights implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    Limit most = limits.get("array-height-most");
    WindMethod.each(
        layout,
        (plane, field) -> ask(plane, field, most, answers),
        (plane, field) -> missing(field, WindMethod.unknown(layout), answers));
  }

  private static void ask(PlaneLayout plane, FieldLayout field, Limit most, Answers answers) {
    TopHeight.of(field)
        .ifPresentOrElse(
            height -> answers.add(fact(field, height, most)),
            () -> missing(field, TopHeight.unknown(field, plane.reading().unreadable()), answers));
  }

  private static void missing(FieldLayout field, String reason, Answers answers) {
    answers.missing(ArrayHeight.class, RoofSubjects.field(field), reason, field.at());
  }

  private static ArrayHeight fact(FieldLayout field, TopHeight height, Limit most) {
    return new ArrayHeight(
        RoofSubjects.field(field).part("height"),
        RoofSubjects.field(field).part("height"),
        height.at(),
        height.unit(),
        field.name(),
        height.from(),
        height.m(),
        most.si(),
        Optional.of(most));
  }
}
