package clampwise.report;

import clampwise.finding.Finding;
import clampwise.finding.Followers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What to fix first: of the findings that weigh most those that show at most places, what follows
 * from them counted in, then those from which most follows, then the first.
 */
final class FixFirst {

  private static final int MOST = 3;

  private FixFirst() {}

  static List<Finding> of(Followers followers) {
    List<Finding> sorted = new ArrayList<>(followers.leading());
    sorted.sort(
        Comparator.comparing(Finding::severity)
            .thenComparing(finding -> -places(finding, followers))
            .thenComparing(finding -> -followers.after(finding).size()));
    return List.copyOf(sorted.subList(0, Math.min(MOST, sorted.size())));
  }

  private static int places(Finding finding, Followers followers) {
    int places = finding.places().size();
    for (Finding after : followers.after(finding)) {
      places += after.places().size();
    }
    return places;
  }

  /** Whether there is enough to choose from for a list to help. */
  static boolean helps(Followers followers) {
    return followers.leading().size() > MOST;
  }

  /** Where a finding shows and what it brings, in few words. */
  static String reach(Finding finding, Followers followers) {
    int after = followers.after(finding).size();
    String places =
        finding.places().size() > 1 ? "; " + Counted.of(finding.places().size(), "place") : "";
    return after == 0 ? places : places + "; " + after + (after == 1 ? " follows" : " follow");
  }
}
