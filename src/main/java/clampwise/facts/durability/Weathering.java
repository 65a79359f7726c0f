package clampwise.facts.durability;

import clampwise.calc.trail.Table;
import clampwise.catalogue.Catalogue;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Job;
import clampwise.job.Unreadable;
import clampwise.source.Span;

/** A layout in the weather, with what questions about its durability need. */
record Weathering(Layout layout, Limits limits, Answers answers) {

  static final Subject ROOF = Subject.of("roof");

  Job job() {
    return layout.job();
  }

  /** Parts of the job before those of the catalogue. */
  Catalogue catalogue() {
    return layout.catalogue().with(job());
  }

  Table metals(String table) {
    return layout.catalogue().codes().file("metals.yaml").get(table);
  }

  Table thermal(String table) {
    return layout.catalogue().codes().file("thermal.yaml").get(table);
  }

  Limit limit(String key) {
    return limits.get(key);
  }

  /** Says that something is not given, or could not be read. */
  String lacks(String what, String... path) {
    return unreadable().missing(what, path);
  }

  Unreadable unreadable() {
    return job().unreadable();
  }

  /** Where what is missing would be written. */
  Span at() {
    return job().at("roof");
  }

  void add(Fact fact) {
    answers.add(fact);
  }

  void missing(Class<? extends Fact> type, Subject subject, String reason) {
    answers.missing(type, subject, reason, Subjects.at(subject, layout.job()));
  }
}
