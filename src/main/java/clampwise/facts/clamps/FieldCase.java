package clampwise.facts.clamps;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Unreadable;
import clampwise.source.Span;
import java.util.function.Consumer;

/** One field of the layout together with what the questions about it need. */
record FieldCase(
    Layout layout, PlaneLayout plane, FieldLayout field, Limits limits, Answers answers) {

  /** A question that is asked field by field. */
  static Question each(Consumer<FieldCase> question) {
    return (layout, limits, answers) ->
        layout
            .planes()
            .forEach(
                plane ->
                    plane
                        .fields()
                        .forEach(
                            field ->
                                question.accept(
                                    new FieldCase(layout, plane, field, limits, answers))));
  }

  Subject subject() {
    return Subjects.field(field.name());
  }

  void add(Fact fact) {
    answers.add(fact);
  }

  void missing(Class<? extends Fact> question, Subject subject, String reason, Span at) {
    answers.missing(question, subject, reason, at);
  }

  /** Says why a key of the field is not known. */
  String unwritten(String unwritten, String what, String key) {
    String known = what + " of field " + field.name();
    return unreadable().unwritten(unwritten, known, "fields", field.name(), key);
  }

  /** Says why something about a module type or a part is not known. */
  Unreadable unreadable() {
    return layout.job().unreadable();
  }

  /** Where the field is written. */
  Span at() {
    return field.at();
  }

  /** Where the schedule of the attachments is written, or the field if it has none. */
  Span scheduleAt() {
    return field.field().attach().flatMap(Schedules::at).orElse(field.at());
  }
}
