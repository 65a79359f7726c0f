package clampwise.report;

import clampwise.plan.PlanSheet;
import clampwise.plan.Sheets;
import clampwise.review.Review;
import clampwise.rulebook.OwnRules;
import clampwise.rulebook.RulePage;
import clampwise.rulebook.RulePages;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A run that is reported on.
 *
 * @param reviews the review of each job, in the order asked for
 * @param version version of this program
 * @param exitCode how the run ends: 0 clear, 1 findings at or above the threshold, 2 unreadable
 *     input, 70 a fault of the program
 * @param drawn drawings that a report has asked for
 * @param own rules of a company's own that were applied too
 */
public record Run(
    List<Review> reviews,
    String version,
    int exitCode,
    Map<Review, List<PlanSheet>> drawn,
    OwnRules own) {

  /** From this code on a run did not do all that was asked for. */
  private static final int FIRST_FAILURE = 2;

  private static final int FAULT = 70;

  /** A run of which nothing has been drawn yet. */
  public Run(List<Review> reviews, String version, int exitCode) {
    this(reviews, version, exitCode, OwnRules.NONE);
  }

  /** A run by own rules too, of which nothing has been drawn yet. */
  public Run(List<Review> reviews, String version, int exitCode, OwnRules own) {
    this(reviews, version, exitCode, new IdentityHashMap<>(), own);
  }

  /** The drawings of one of its reviews, made once for all reports. */
  List<PlanSheet> sheets(Review review) {
    return drawn.computeIfAbsent(review, Sheets::of);
  }

  /** The page of a rule that ships or is a company's own. */
  Optional<RulePage> page(String rule) {
    return rule.startsWith(OwnRules.PREFIX) ? own.page(rule) : RulePages.find(rule);
  }

  /** A run that ends well. */
  public Run(List<Review> reviews, String version) {
    this(reviews, version, 0);
  }

  /** Whether every job was read and reviewed. */
  boolean isComplete() {
    return exitCode < FIRST_FAILURE;
  }

  /** Whether the review of a job broke off, so that it is not among the reviews. */
  boolean isFaulty() {
    return exitCode == FAULT;
  }

  /** What the exit code says, in words. */
  String outcome() {
    return switch (exitCode) {
      case 0 -> "no finding reaches the threshold";
      case 1 -> "findings reach the threshold";
      case FAULT -> "a fault of clampwise: a job was not reviewed";
      default -> "unreadable input: what depends on it was not reviewed";
    };
  }
}
