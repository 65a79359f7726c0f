package clampwise.finding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The findings that stand on their own, each with those that only follow from it. */
public final class Followers {

  private final List<Finding> leading = new ArrayList<>();
  private final Map<FindingName, List<Finding>> byLeader = new HashMap<>();

  private Followers(List<Finding> findings) {
    Set<FindingName> names = new HashSet<>();
    findings.forEach(finding -> names.add(finding.name()));
    for (Finding finding : findings) {
      Optional<FindingName> leader = finding.follows().filter(names::contains);
      leader.ifPresentOrElse(
          name -> byLeader.computeIfAbsent(name, unseen -> new ArrayList<>()).add(finding),
          () -> leading.add(finding));
    }
  }

  /** In the order of the review; what follows from a finding that is not there stands alone. */
  public static Followers of(List<Finding> findings) {
    return new Followers(findings);
  }

  /** Those that stand on their own, in the order of the review. */
  public List<Finding> leading() {
    return leading;
  }

  /** What follows from a finding, in the order of the review. */
  public List<Finding> after(Finding finding) {
    return byLeader.getOrDefault(finding.name(), List.of());
  }

  /** How many findings only follow from others. */
  public int count() {
    return byLeader.values().stream().mapToInt(List::size).sum();
  }
}
