package clampwise.rulebook;

import clampwise.finding.Basis;
import clampwise.finding.Severity;
import java.util.List;
import java.util.Optional;

/**
 * What a rule says of itself.
 *
 * @param id its id, which is also the name of its file
 * @param topic folder it stands in
 * @param title what kind of defect it finds
 * @param severity how much the defect weighs
 * @param judges simple name of the fact type whose facts are its subjects
 * @param measured component of the fact that holds the measured number
 * @param limit component of the fact that holds its limit
 * @param message what was found, with placeholders
 * @param reason why it matters
 * @param remedy what would clear it, with placeholders
 * @param basis what it rests on
 * @param since version of the program that brought it
 * @param editions editions of the codes it holds for; all if none is named
 * @param follows rules whose defects bring this one with them
 */
public record RuleCard(
    String id,
    String topic,
    String title,
    Severity severity,
    String judges,
    Optional<String> measured,
    Optional<String> limit,
    Template message,
    String reason,
    Template remedy,
    List<Basis> basis,
    String since,
    List<String> editions,
    List<String> follows) {

  /** The same card where a house gives its defects another weight. */
  RuleCard weighing(Severity weight) {
    return weight == severity
        ? this
        : new RuleCard(
            id, topic, title, weight, judges, measured, limit, message, reason, remedy, basis,
            since, editions, follows);
  }

  /** Whether it is a rule of a company's own. */
  public boolean isOwn() {
    return id.startsWith(OwnRules.PREFIX);
  }

  /** Whether the limit is a quantity that the rule itself writes down. */
  boolean writesLimit() {
    return limit.isPresent() && Character.isDigit(limit.get().charAt(0));
  }

  /** Whether what the limit of the fact rests on is what the rule rests on too. */
  boolean usesLimitOfFact() {
    return !isOwn() || limit.isPresent() && !writesLimit();
  }

  /** The same card under another title. */
  public RuleCard titled(String other) {
    return new RuleCard(
        id, topic, other, severity, judges, measured, limit, message, reason, remedy, basis, since,
        editions, follows);
  }
}
