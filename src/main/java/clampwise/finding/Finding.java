package clampwise.finding;

import clampwise.calc.trail.Chain;
import clampwise.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * One mistake, wherever it shows.
 *
 * @param rule id of the rule that found it
 * @param severity how much it weighs
 * @param title what kind of defect it is
 * @param message what was found, with the designer's own numbers
 * @param reason why it matters in the trade
 * @param remedy one concrete change that would clear it
 * @param basis what the limit rests on
 * @param cause the subject that has to change; with the rule it is the finding's identity
 * @param at the value that has to change
 * @param comparison the worst measured number and its limit, where the rule compares numbers
 * @param places every place at which it shows, worst first
 * @param chain how the worst number was got, where it was calculated
 * @param loadCase the load case that governs; empty where no loads are compared
 * @param follows the finding that brings this one with it, if it only follows from another
 */
public record Finding(
    String rule,
    Severity severity,
    String title,
    String message,
    String reason,
    String remedy,
    List<Basis> basis,
    Subject cause,
    Span at,
    Optional<Comparison> comparison,
    List<Place> places,
    Optional<Chain> chain,
    String loadCase,
    Optional<FindingName> follows) {

  /** A finding that compares no loads. */
  public Finding(
      String rule,
      Severity severity,
      String title,
      String message,
      String reason,
      String remedy,
      List<Basis> basis,
      Subject cause,
      Span at,
      Optional<Comparison> comparison,
      List<Place> places,
      Optional<Chain> chain,
      Optional<FindingName> follows) {
    this(
        rule,
        severity,
        title,
        message,
        reason,
        remedy,
        basis,
        cause,
        at,
        comparison,
        places,
        chain,
        "",
        follows);
  }

  /** The same finding as a consequence of another one. */
  public Finding following(FindingName other) {
    return with(severity, Optional.of(other));
  }

  /** The same finding where its rule weighs something else. */
  public Finding weighing(Severity other) {
    return other == severity ? this : with(other, follows);
  }

  /** The same finding on its own, where what it follows from is not open. */
  public Finding leading() {
    return follows.isEmpty() ? this : with(severity, Optional.empty());
  }

  private Finding with(Severity weight, Optional<FindingName> leader) {
    return new Finding(
        rule,
        weight,
        title,
        message,
        reason,
        remedy,
        basis,
        cause,
        at,
        comparison,
        places,
        chain,
        loadCase,
        leader);
  }

  /** What it is known by. */
  public FindingName name() {
    return new FindingName(rule, cause, loadCase);
  }

  /** Whether it stands on its own. */
  public boolean leads() {
    return follows.isEmpty();
  }
}
