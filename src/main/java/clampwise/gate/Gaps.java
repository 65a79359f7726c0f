package clampwise.gate;

import clampwise.finding.Coverage;
import clampwise.finding.FindingName;
import clampwise.finding.NotChecked;
import clampwise.review.Review;
import clampwise.rulebook.OwnRules;
import java.util.List;

/** Tells what is gone from what could not be judged this time. */
final class Gaps {

  private static final String FIELDS = "fields.";

  private Gaps() {}

  /** Whether a finding that is not there would be there if it still held. */
  static boolean wouldShow(FindingName name, Review review) {
    if (!review.problems().isEmpty() || OwnRules.isElsewhere(name.rule(), rules(review))) {
      return false;
    }
    for (NotChecked gap : review.notChecked()) {
      if (gap.rule().equals(name.rule()) && concerns(gap, name)) {
        return false;
      }
    }
    return true;
  }

  private static List<String> rules(Review review) {
    return review.coverage().stream().map(Coverage::rule).toList();
  }

  /** What belongs to one field is not in doubt because another field could not be judged. */
  private static boolean concerns(NotChecked gap, FindingName name) {
    String missing = gap.subject().first();
    String cause = name.cause().first();
    boolean otherField = missing.startsWith(FIELDS) && !missing.equals(cause);
    return !(otherField && cause.startsWith(FIELDS));
  }
}
