package clampwise.facts.takeoff;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Takeoff;
import clampwise.source.Span;
import clampwise.takeoff.Counts;
import java.util.ArrayList;
import java.util.List;

/**
 * What a job says of its order, with what the questions about it need.
 *
 * @param rules what is usual of spares, pallets and crews
 */
record TakeoffAsked(Layout layout, Takeoff takeoff, Counts counts, Limits rules, Answers answers) {

  static final Subject TAKEOFF = Subject.of("takeoff");

  /** Whether something under a key of the take-off could not be read. */
  boolean isLost(String... path) {
    List<String> whole = new ArrayList<>(List.of("takeoff"));
    whole.addAll(List.of(path));
    return layout.job().unreadable().touches(whole.toArray(String[]::new));
  }

  /** Where what is missing would be written. */
  Span at() {
    return layout.job().at("takeoff");
  }

  void missing(Class<? extends Fact> question, Subject subject, String reason) {
    answers.missing(question, subject, reason, Subjects.at(subject, layout.job()));
  }

  void missing(Class<? extends Fact> question, Subject subject, String reason, Span at) {
    answers.missing(question, subject, reason, at);
  }
}
