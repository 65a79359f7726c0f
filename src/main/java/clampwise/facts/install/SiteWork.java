package clampwise.facts.install;

import clampwise.catalogue.Limits;
import clampwise.catalogue.Tables;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Install;
import clampwise.source.Span;
import java.util.stream.Stream;

/** What a job says of the work on the roof, with what the questions about it need. */
record SiteWork(Layout layout, Install install, Limits limits, Answers answers) {

  static final Subject INSTALL = Subject.of("install");

  Tables tables() {
    return layout.catalogue().codes().file("install.yaml");
  }

  boolean isLost(String... path) {
    return layout.job().unreadable().touches(under(path));
  }

  /** Says that something of the work is not given, or could not be read. */
  String lacks(String what, String... path) {
    return layout.job().unreadable().missing(what, under(path));
  }

  private static String[] under(String... path) {
    return Stream.concat(Stream.of("install"), Stream.of(path)).toArray(String[]::new);
  }

  void missing(Class<? extends Fact> question, Subject subject, String reason) {
    answers.missing(question, subject, reason, Subjects.at(subject, layout.job()));
  }

  /** Where what is missing would be written. */
  Span at() {
    return layout.job().at("install");
  }
}
