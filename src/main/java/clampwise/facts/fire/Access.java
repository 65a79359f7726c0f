package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Fire;
import clampwise.job.Fire.Occupancy;
import clampwise.job.Fire.RuleSet;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/**
 * A job with the rule set that access to its roof is judged by.
 *
 * @param limits what all rule sets ask for
 */
record Access(
    Layout layout,
    Fire fire,
    Choice<RuleSet> rules,
    Occupancy occupancy,
    Limits limits,
    Answers answers) {

  static Subject subject(String what) {
    return Subject.of("fire", what);
  }

  /** What the rule set asks for; empty if it asks for nothing of the kind. */
  Optional<Limit> limit(String what) {
    return limits.find(rules + " " + what);
  }

  Span at() {
    return rules.at();
  }

  /** Planes that carry modules. */
  List<PlaneLayout> arrayPlanes() {
    return layout.planes().stream().filter(plane -> !modules(plane).isEmpty()).toList();
  }

  static List<PlacedModule> modules(PlaneLayout plane) {
    return plane.fields().stream().flatMap(field -> field.modules().stream()).toList();
  }

  /** Whether a key of the fire section is written but could not be read. */
  boolean isLost(String key) {
    return layout.job().unreadable().touches("fire", key);
  }

  /** Says that a key of the fire section is not given, or could not be read. */
  String unknown(String what, String key) {
    return layout.job().unreadable().missing(what, "fire", key);
  }

  /** The unit in which the first plane with modules was measured, for short lengths. */
  Unit shown() {
    return Shown.small(Shown.of(arrayPlanes().get(0)));
  }

  void add(Fact fact) {
    answers.add(fact);
  }

  void missing(Class<? extends Fact> question, Subject subject, String reason) {
    answers.missing(question, subject, reason, at());
  }
}
