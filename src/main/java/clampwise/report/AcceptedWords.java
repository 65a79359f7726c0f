package clampwise.report;

import clampwise.finding.Accepted;
import clampwise.finding.Accepted.Kind;
import java.util.List;

/** What reports say of findings that somebody answers for. */
final class AcceptedWords {

  /** Title of the section that lists them. */
  static final String TITLE = "Accepted, not mended";

  /** What accepting means. */
  static final String MEANING =
      "These stand in the layout. Somebody answers for each; this program does not.";

  /** What is said where nothing else was found. */
  static final String NOTHING_OPEN =
      "Nothing is open but what somebody answers for. That is no approval.";

  private AcceptedWords() {}

  /** How many there are of each kind, such as {@code 1 accepted deviation, 2 known debts}. */
  static String counts(List<Accepted> accepted) {
    int deviations = 0;
    for (Accepted one : accepted) {
      deviations += one.kind() == Kind.DEVIATION ? 1 : 0;
    }
    int debts = accepted.size() - deviations;
    String first = deviations == 0 ? "" : Counted.of(deviations, "accepted deviation");
    String second = debts == 0 ? "" : Counted.of(debts, "known debt");
    return first + (first.isEmpty() || second.isEmpty() ? "" : ", ") + second;
  }
}
