package clampwise.facts.loads;

import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.job.Claims;
import clampwise.source.Span;

/** What the drawings state of loads, beside the loads of one field. */
record ClaimedLoads(FieldLoads loads, Claims claims, Answers answers) {

  private static final double STEPS = 1e7;

  /** Asks all questions about what the drawings state of the loads of a field. */
  static void ask(FieldLoads loads, Shares shares, Answers answers) {
    loads
        .site()
        .job()
        .claims()
        .ifPresent(
            claims -> {
              ClaimedLoads asked = new ClaimedLoads(loads, claims, answers);
              PressureClaims.ask(asked);
              FactorClaims.ask(asked);
              TributaryClaims.ask(asked, shares);
            });
  }

  FieldSite site() {
    return loads.site();
  }

  String field() {
    return site().field().name();
  }

  /** What is stated, for this field. */
  Subject subject(Subject stated) {
    return stated.part("fields." + field());
  }

  void missing(Class<? extends Fact> question, Subject stated, String reason, Span at) {
    answers.missing(question, subject(stated), reason, at);
  }

  /** The least that may be stated for a computed value, in whole steps of its printed form. */
  double least(double computedSi, double stepSi) {
    double below = site().limits().get("claim-below-most").si();
    return steps(computedSi * (1 - below), stepSi);
  }

  /** The most that may be stated before a designer should look. */
  double most(double computedSi, double stepSi) {
    double above = site().limits().get("claim-above-most").si();
    return steps(computedSi * (1 + above), stepSi);
  }

  private static double steps(double si, double stepSi) {
    return exact(Math.rint(si / stepSi) * stepSi);
  }

  /** Without the noise of conversions, so that a value at its limit is at its limit. */
  static double exact(double si) {
    return Math.rint(si * STEPS) / STEPS;
  }
}
