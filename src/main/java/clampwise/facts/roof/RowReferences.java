package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.job.Choice;
import clampwise.job.Field.ReferenceLine;
import clampwise.job.Survey;
import clampwise.job.Survey.OutOfSquare;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks of each field whether what its first row is set out from is square to the seams. */
final class RowReferences implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    WrittenOnce written =
        new WrittenOnce(layout, field -> field.field().setOutFrom().map(Choice::at));
    Optional<OutOfSquare> eave = layout.job().survey().flatMap(Survey::eaveOutOfSquare);
    Limit most = limits.get("out-of-square-most");
    layout.fields().forEach(field -> ask(field, eave, most, written, answers));
  }

  private static void ask(
      FieldLayout field,
      Optional<OutOfSquare> eave,
      Limit most,
      WrittenOnce written,
      Answers answers) {
    Optional<Choice<ReferenceLine>> reference = field.field().setOutFrom();
    if (reference.isEmpty()) {
      missing(field, "what field " + field.name() + " is set out from is not given", answers);
    } else if (reference.get().value() == ReferenceLine.SEAMS) {
      answers.add(square(field, most, written));
    } else if (eave.isEmpty()) {
      missing(field, "how far the eave is out of square was not surveyed", answers);
    } else {
      answers.add(fromEave(field, eave.get(), most, written));
    }
  }

  private static void missing(FieldLayout field, String reason, Answers answers) {
    answers.missing(RowReference.class, RoofSubjects.field(field), reason, field.at());
  }

  private static RowReference square(FieldLayout field, Limit most, WrittenOnce written) {
    return new RowReference(
        RoofSubjects.field(field).part("first row"),
        written.cause(field).part("first row"),
        field.field().setOutFrom().orElseThrow().at(),
        Unit.MILLIMETRE,
        field.name(),
        "seams",
        0,
        0,
        0,
        Optional.of(most));
  }

  private static RowReference fromEave(
      FieldLayout field, OutOfSquare eave, Limit most, WrittenOnce written) {
    return new RowReference(
        RoofSubjects.field(field).part("first row"),
        written.cause(field).part("first row"),
        field.field().setOutFrom().orElseThrow().at(),
        eave.offset().unit(),
        field.name(),
        "eave",
        eave.offset().m(),
        eave.over().m(),
        Snap.m(most.si() * eave.over().m()),
        Optional.of(most));
  }
}
