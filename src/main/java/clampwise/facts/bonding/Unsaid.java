package clampwise.facts.bonding;

import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;

/** Says that a job without a word on bonding is not checked for it. */
final class Unsaid {

  private Unsaid() {}

  static void tell(Class<? extends Fact> question, Layout layout, Answers answers) {
    answers.missing(question, Subject.of("bonding"), reason(layout), layout.job().at("bonding"));
  }

  static String reason(Layout layout) {
    return layout.job().unreadable().holds("bonding")
        ? "the bonding could not be read"
        : "the job says nothing about bonding (bonding)";
  }
}
