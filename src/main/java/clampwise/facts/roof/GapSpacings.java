package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import java.util.Comparator;
import java.util.Optional;

/** Holds the distance between gaps, which is the longest side of a module, against the method's. */
final class GapSpacings implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    Limit most = limits.get("array-gap-spacing-most");
    WindMethod.each(
        layout,
        (plane, field) -> longest(field).ifPresent(m -> answers.add(fact(field, m, most))),
        (plane, field) ->
            answers.missing(
                GapSpacing.class,
                RoofSubjects.field(field),
                WindMethod.unknown(layout),
                field.at()));
  }

  private static Optional<PlacedModule> longest(FieldLayout field) {
    return field.modules().stream().max(Comparator.comparingDouble(GapSpacings::sideM));
  }

  private static double sideM(PlacedModule module) {
    return Math.max(module.alongM(), module.upM());
  }

  private static GapSpacing fact(FieldLayout field, PlacedModule module, Limit most) {
    return new GapSpacing(
        RoofSubjects.field(field).part("gap spacing"),
        Subject.of("modules." + module.typeName(), "gap spacing"),
        field.field().module().at(),
        module.type().length().unit(),
        field.name(),
        module.name(),
        module.typeName(),
        Snap.m(sideM(module)),
        Snap.m(most.si()),
        Optional.of(most));
  }
}
