package clampwise.facts.accuracy;

import clampwise.calc.accuracy.ToleranceStack;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Count;
import clampwise.job.Install;
import clampwise.job.Install.ReDatum;
import clampwise.job.Quantity.Length;
import clampwise.job.Unreadable;
import clampwise.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * Asks of each field how far its modules may be off after a row and after a column.
 *
 * @param tolerance how far a module may be off beside the one before
 */
record StackQuestions(
    Layout layout, Install install, Length tolerance, Limits limits, Answers answers) {

  static void ask(Layout layout, Install install, Limits limits, Answers answers) {
    Optional<Length> tolerance = install.tolerance();
    if (tolerance.isEmpty()) {
      Unreadable lost = layout.job().unreadable();
      String what = "how far a module may be off its place";
      String reason = lost.missing(what, "install", "tolerance");
      for (Class<? extends Fact> type : List.of(RowStack.class, ColumnStack.class)) {
        answers.missing(type, Subject.of("install"), reason, layout.job().at("install"));
      }
      return;
    }
    StackQuestions questions =
        new StackQuestions(layout, install, tolerance.get(), limits, answers);
    for (PlaneLayout plane : layout.planes()) {
      for (FieldLayout field : plane.fields()) {
        if (!field.modules().isEmpty()) {
          new RowStacks(questions, plane, field).ask();
          new ColumnStacks(questions, field).ask();
        }
      }
    }
  }

  ToleranceStack stack() {
    return new ToleranceStack(tolerance.m());
  }

  /** After how many columns of a row, or rows of a column, there is a mark. */
  Optional<Count> columnsToMark() {
    return install.reDatum().flatMap(ReDatum::columns);
  }

  Optional<Count> rowsToMark() {
    return install.reDatum().flatMap(ReDatum::rows);
  }

  /** The distance of the marks if it is written, else the tolerance. */
  Span at(Optional<Count> marks) {
    return marks.map(Count::at).orElse(tolerance.at());
  }

  void missing(Class<? extends Fact> type, FieldLayout field, String reason) {
    answers.missing(type, Subjects.field(field.name()), reason, field.at());
  }
}
