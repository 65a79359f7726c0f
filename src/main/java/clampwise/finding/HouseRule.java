package clampwise.finding;

import clampwise.source.Span;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What is asked about a house's own files rather than about the layout: its policy, the deviations
 * it accepted and the debts it knows.
 */
public enum HouseRule {
  CODE_OTHER_THAN_POLICY(
      Severity.ERROR,
      "Code other than the policy's",
      "Who checks the package checks it against the code that the house has fixed for the place."),
  DOCUMENT_ASKED_BY_POLICY(
      Severity.ERROR,
      "Document that the policy asks for is missing",
      "The house does not let a package out without it."),
  LIMIT_MAY_LET_MORE_PASS(
      Severity.NOTE,
      "House limit by which more may pass",
      "What only the shipped limit would find is listed nowhere; the house answers for it."),
  DEVIATION_OF_UNKNOWN_RULE(
      Severity.ERROR,
      "Accepted deviation from a rule that does not exist",
      "It accepts nothing, and whoever wrote it believes that it does."),
  DEVIATION_UNUSED(
      Severity.WARNING,
      "Accepted deviation that nothing deviates by any more",
      "A deviation that is kept for nothing would let the same mistake in again unseen."),
  DEVIATION_EXPIRED(
      Severity.WARNING,
      "Accepted deviation past its last day",
      "It was accepted for a time; whoever accepted it has to look again."),
  DEVIATION_NOT_YET(
      Severity.WARNING,
      "Accepted deviation dated after today",
      "Either the date or the clock of this machine is wrong, so its last day means nothing."),
  DEVIATION_OUTGROWN(
      Severity.WARNING,
      "Accepted deviation that has got worse",
      "What was accepted was a number or a few places, not whatever the layout grows into."),
  DEVIATION_OF_OTHER_REVISION(
      Severity.WARNING,
      "Accepted deviation of another revision",
      "It was accepted for drawings that these are not."),
  DEBT_OUTGROWN(
      Severity.WARNING,
      "Known debt that has got worse",
      "What was recorded when clampwise was adopted is tolerated, what was added since is not."),
  DEBT_SOLVED(
      Severity.NOTE,
      "Known debt that is solved",
      "A debt that stays in the record would let the same mistake in again unseen.");

  /** Key of what a house itself asks for, among the references. */
  private static final String BASIS = "house-policy";

  private final Severity severity;
  private final String title;
  private final String reason;

  HouseRule(Severity severity, String title, String reason) {
    this.severity = severity;
    this.title = title;
    this.reason = reason;
  }

  /** Its id, as those of shipped rules are written. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether a rule is one of these. */
  public static boolean is(String id) {
    return find(id).isPresent();
  }

  /** The one of an id. */
  public static Optional<HouseRule> find(String id) {
    for (HouseRule rule : values()) {
      if (rule.id().equals(id)) {
        return Optional.of(rule);
      }
    }
    return Optional.empty();
  }

  /** How much its defects weigh unless the policy says otherwise. */
  public Severity severity() {
    return severity;
  }

  /** What kind of defect it finds. */
  public String title() {
    return title;
  }

  /** Why it matters. */
  public String reason() {
    return reason;
  }

  /** Words of one finding. */
  public record Words(String message, String remedy) {}

  /** A finding that stands on its own. */
  public Finding found(Subject cause, Span at, Words words) {
    return found(severity, cause, at, words, Optional.empty());
  }

  /** A finding about one that is back because of it, and weighs no more than that one. */
  public Finding found(Finding back, Subject cause, Span at, Words words) {
    Severity no = back.severity().compareTo(severity) > 0 ? back.severity() : severity;
    FindingName first = back.follows().orElseGet(back::name);
    return found(no, cause, at, words, Optional.of(first));
  }

  private Finding found(
      Severity weight, Subject cause, Span at, Words words, Optional<FindingName> follows) {
    return new Finding(
        id(),
        weight,
        title,
        words.message(),
        reason,
        words.remedy(),
        List.of(Basis.of(BASIS, "")),
        cause,
        at,
        Optional.empty(),
        List.of(new Place(cause, at, Optional.empty(), List.of())),
        Optional.empty(),
        follows);
  }
}
