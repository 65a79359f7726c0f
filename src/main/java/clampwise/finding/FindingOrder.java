package clampwise.finding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The findings as every report lists them: by severity, then by the thing of the job they concern,
 * numbered through from 1. What only follows from another finding has that one's number.
 */
public final class FindingOrder {

  private final Followers followers;
  private final List<Group> groups = new ArrayList<>();
  private final Map<FindingName, Integer> numbers = new HashMap<>();

  /**
   * Findings of one severity that concern one thing of the job.
   *
   * @param place the thing
   * @param findings numbered on from the group before
   */
  public record Group(Severity severity, String place, List<Finding> findings) {}

  private FindingOrder(Followers followers) {
    this.followers = followers;
    for (Severity severity : Severity.values()) {
      byPlace(severity, followers.leading())
          .forEach((place, findings) -> groups.add(new Group(severity, place, findings)));
    }
    for (Group group : groups) {
      for (Finding finding : group.findings()) {
        int number = numbers.size() + 1;
        numbers.put(finding.name(), number);
      }
    }
  }

  /** The order of the findings of a review. */
  public static FindingOrder of(List<Finding> findings) {
    return new FindingOrder(Followers.of(findings));
  }

  /** The groups in the order in which they are listed. */
  public List<Group> groups() {
    return groups;
  }

  /** What stands on its own and what follows from it. */
  public Followers followers() {
    return followers;
  }

  /** The number of a finding that stands on its own. */
  public Optional<Integer> number(Finding finding) {
    return Optional.ofNullable(numbers.get(finding.name()));
  }

  /** Findings by the first part of their subject, in the order of the review. */
  private static Map<String, List<Finding>> byPlace(Severity severity, List<Finding> findings) {
    Map<String, List<Finding>> places = new LinkedHashMap<>();
    for (Finding finding : findings) {
      if (finding.severity() == severity) {
        String place = finding.cause().first();
        places.computeIfAbsent(place, unseen -> new ArrayList<>()).add(finding);
      }
    }
    return places;
  }
}
