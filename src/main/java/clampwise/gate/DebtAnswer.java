package clampwise.gate;

import clampwise.finding.Accepted;
import clampwise.finding.Finding;
import clampwise.finding.FindingName;
import clampwise.finding.HouseRule;
import clampwise.finding.HouseRule.Words;
import clampwise.gate.DebtFile.Debt;
import clampwise.job.Day;
import clampwise.source.Span;
import java.time.LocalDate;
import java.util.Optional;

/** A finding that was there when the record of known debts was begun. */
record DebtAnswer(Debt written, Day recorded) implements Answer {

  static final String KIND = "known debts";

  @Override
  public FindingName name() {
    return Answer.name(written.rule(), written.subject(), written.loadCase());
  }

  @Override
  public Span at() {
    return written.rule().at();
  }

  @Override
  public Accepted accept(Finding finding) {
    String reason = "recorded on " + recorded + " (" + at() + ")";
    return new Accepted(finding, Accepted.Kind.DEBT, reason, "", "", at());
  }

  @Override
  public Optional<Fault> fault(Finding finding, String revision, LocalDate today) {
    String remedy = "correct what was added since, or have it accepted with a reason";
    return new Extent(written.value(), written.places())
        .exceededBy(finding)
        .map(how -> "a known debt since " + recorded + ", but " + how)
        .map(message -> new Fault(HouseRule.DEBT_OUTGROWN, new Words(message, remedy)));
  }

  @Override
  public Finding idle() {
    String message =
        "nothing is found by " + written.rule() + " at " + written.subject() + " any more";
    String remedy = "take it out of the record with clampwise record";
    return HouseRule.DEBT_SOLVED.found(subject(KIND), at(), new Words(message, remedy));
  }
}
