package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.catalogue.Catalogue;
import clampwise.catalogue.Limits;
import clampwise.catalogue.Tables;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Electrical;
import clampwise.job.ElectricalCode;
import clampwise.job.Job;
import clampwise.job.Unreadable;
import clampwise.source.Span;
import java.util.stream.Stream;

/** What a job says of strings, conductors and protection, with what its questions need. */
record Wiring(Layout layout, Electrical electrical, Limits limits, Answers answers) {

  static final Subject ELECTRICAL = Subject.of("electrical");

  Job job() {
    return layout.job();
  }

  /** Parts and module types of the job before those of the catalogue. */
  Catalogue catalogue() {
    return layout.catalogue().with(job());
  }

  Tables tables() {
    return layout.catalogue().codes().file("electrical.yaml");
  }

  /** The code in force: the one written with the strings, else the site's. */
  Outcome<ElectricalCode> code() {
    return ElectricalCode.inForce(job())
        .<Outcome<ElectricalCode>>map(Result::new)
        .orElseGet(() -> new NotApplicable<>(codeUnknown()));
  }

  private String codeUnknown() {
    boolean lost = isLost("code") || unreadable().touches("site", "codes", "electrical");
    return lost
        ? "the electrical code in force could not be read"
        : "the job names no electrical code that the program knows (site: codes: electrical)";
  }

  Unreadable unreadable() {
    return job().unreadable();
  }

  /** Whether something under a key of the electrical part could not be read. */
  boolean isLost(String... path) {
    return unreadable().touches(under(path));
  }

  /** Says that something of the electrical part is not given, or could not be read. */
  String lacks(String what, String... path) {
    return unreadable().missing(what, under(path));
  }

  private static String[] under(String... path) {
    return Stream.concat(Stream.of("electrical"), Stream.of(path)).toArray(String[]::new);
  }

  /** Where what is missing would be written. */
  Span at() {
    return job().at("electrical");
  }

  void missing(Class<? extends Fact> question, Subject subject, String reason, Span at) {
    answers.missing(question, subject, reason, at);
  }

  void missing(Class<? extends Fact> question, Subject subject, String reason) {
    answers.missing(question, subject, reason, Subjects.at(subject, layout.job()));
  }
}
