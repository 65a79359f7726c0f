package clampwise.report;

import clampwise.finding.NotChecked;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Everything that could not be judged for one reason.
 *
 * @param reason which input is missing or why the method does not apply
 * @param at where the input would be written
 * @param rules the rules that could not be applied, in order of id
 * @param subjects how many different subjects they would have judged
 */
record NotCheckedGroup(String reason, Span at, List<String> rules, int subjects) {

  /** Rules that are all named before the rest is only counted. */
  private static final int RULES_SHOWN = 3;

  private record Key(String reason, Span at) {}

  /** The groups, in the order in which their first member stands in the review. */
  static List<NotCheckedGroup> of(List<NotChecked> all) {
    Map<Key, List<NotChecked>> byReason = new LinkedHashMap<>();
    for (NotChecked one : all) {
      Key key = new Key(one.reason(), one.at());
      byReason.computeIfAbsent(key, unseen -> new ArrayList<>()).add(one);
    }
    List<NotCheckedGroup> groups = new ArrayList<>();
    byReason.forEach((key, members) -> groups.add(of(key, members)));
    return groups;
  }

  /** The rules, only counted where there are too many to read. */
  String rulesInShort() {
    return rules.size() <= RULES_SHOWN
        ? String.join(", ", rules)
        : String.join(", ", rules.subList(0, 2)) + " and " + (rules.size() - 2) + " more";
  }

  private static NotCheckedGroup of(Key key, List<NotChecked> members) {
    Set<String> rules = new TreeSet<>();
    Set<String> subjects = new TreeSet<>();
    for (NotChecked member : members) {
      rules.add(member.rule());
      subjects.add(member.subject().path());
    }
    return new NotCheckedGroup(key.reason(), key.at(), List.copyOf(rules), subjects.size());
  }
}
