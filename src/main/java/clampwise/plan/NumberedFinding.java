package clampwise.plan;

import clampwise.finding.Finding;
import clampwise.finding.FindingOrder;
import clampwise.finding.FindingOrder.Group;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A finding with its number in the list and the places on the roof where it shows.
 *
 * @param spots the worst first; where nothing of it has a place on the roof, empty
 */
record NumberedFinding(int number, Finding finding, List<Spot> spots) {

  /** All that stand on their own, in the order of the list. */
  static List<NumberedFinding> of(List<Finding> findings, Spots spots) {
    FindingOrder order = FindingOrder.of(findings);
    List<NumberedFinding> numbered = new ArrayList<>();
    for (Group group : order.groups()) {
      for (Finding finding : group.findings()) {
        int number = order.number(finding).orElse(numbered.size() + 1);
        numbered.add(new NumberedFinding(number, finding, spots(finding, spots)));
      }
    }
    return numbered;
  }

  private static List<Spot> spots(Finding finding, Spots spots) {
    List<Spot> found =
        finding.places().stream()
            .map(place -> spots.of(place.subject()))
            .flatMap(Optional::stream)
            .toList();
    return found.isEmpty()
        ? Stream.of(spots.of(finding.cause())).flatMap(Optional::stream).toList()
        : found;
  }

  /** Those of its places that lie on a plane. */
  List<Spot> on(String plane) {
    return spots.stream().filter(spot -> spot.plane().equals(plane)).toList();
  }

  /** Numbers of the findings that have no place on the roof. */
  static Set<Integer> elsewhere(List<NumberedFinding> all) {
    Set<Integer> numbers = new TreeSet<>();
    all.stream().filter(each -> each.spots.isEmpty()).forEach(each -> numbers.add(each.number));
    return numbers;
  }

  /** What its mark says when asked. */
  String title() {
    return number + ". " + finding.severity().word() + ": " + finding.message();
  }
}
