package clampwise.facts.survey;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.job.Choice;
import clampwise.job.Field;
import clampwise.job.Survey;
import clampwise.job.Survey.OutOfSquare;
import clampwise.job.Unreadable;
import clampwise.source.Span;
import java.util.Map;
import java.util.Optional;

/** Asks of each field that is set out from the eave how square the eave is to the panels. */
final class ReferenceLines {

  private final Optional<OutOfSquare> measured;
  private final Limit limit;
  private final Answers answers;
  private final Unreadable unreadable;

  private ReferenceLines(Layout layout, Limits limits, Answers answers) {
    this.measured = layout.job().survey().flatMap(Survey::eaveOutOfSquare);
    this.limit = limits.get("out-of-square-most");
    this.answers = answers;
    this.unreadable = layout.job().unreadable();
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    ReferenceLines lines = new ReferenceLines(layout, limits, answers);
    layout.fields().forEach(lines::judge);
  }

  private void judge(FieldLayout field) {
    Optional<Choice<Field.ReferenceLine>> from = field.field().setOutFrom();
    if (from.isEmpty()) {
      missing(field, unwritten(field), field.at());
    } else if (from.get().value() == Field.ReferenceLine.EAVE) {
      Span at = from.get().at();
      measured.ifPresentOrElse(
          eave -> answers.add(fact(field, eave, at)), () -> missing(field, unmeasured(), at));
    }
  }

  private String unwritten(FieldLayout field) {
    String what = "what field " + field.name() + " is set out from";
    return unreadable.missing(what, "fields", field.name(), "set-out-from");
  }

  private String unmeasured() {
    String what = "how square the eave is to the panels";
    String key = "eave-out-of-square";
    return unreadable.unwritten("nobody has measured " + what, what, "survey", key);
  }

  private ReferenceLine fact(FieldLayout field, OutOfSquare eave, Span at) {
    return new ReferenceLine(
        Subjects.field(field.name()),
        at,
        eave.offset().unit(),
        Map.of("overM", eave.over().unit()),
        field.name(),
        Snap.m(eave.offset().m()),
        Snap.m(eave.over().m()),
        Snap.m(limit.si() * eave.over().m()),
        limit);
  }

  private void missing(FieldLayout field, String reason, Span at) {
    answers.missing(ReferenceLine.class, Subjects.field(field.name()), reason, at);
  }
}
