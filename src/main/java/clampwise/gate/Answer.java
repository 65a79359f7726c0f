package clampwise.gate;

import clampwise.finding.Accepted;
import clampwise.finding.Finding;
import clampwise.finding.FindingName;
import clampwise.finding.HouseRule;
import clampwise.finding.HouseRule.Words;
import clampwise.finding.Subject;
import clampwise.job.Text;
import clampwise.source.Span;
import java.time.LocalDate;
import java.util.Optional;

/** Something that answers for one finding: an accepted deviation or a known debt. */
sealed interface Answer permits DeviationAnswer, DebtAnswer {

  /** The finding it answers for. */
  FindingName name();

  /** The name of a finding as it is written down. */
  static FindingName name(Text rule, Text subject, Optional<Text> loadCase) {
    return new FindingName(
        rule.value(), new Subject(subject.value()), loadCase.map(Text::value).orElse(""));
  }

  /** Where it is written. */
  Span at();

  /** What it is called where it is itself at fault. */
  default Subject subject(String kind) {
    String loadCase = name().loadCase().isEmpty() ? "" : ", " + name().loadCase();
    return Subject.of(kind, name().rule(), name().cause().path() + loadCase);
  }

  /** Why it does not hold for what was found, if it does not. */
  Optional<Fault> fault(Finding finding, String revision, LocalDate today);

  /** The finding answered for. */
  Accepted accept(Finding finding);

  /** That nothing is found any more for which it would answer. */
  Finding idle();

  /** Why an answer does not hold. */
  record Fault(HouseRule rule, Words words) {}
}
