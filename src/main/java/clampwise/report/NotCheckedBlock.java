package clampwise.report;

import clampwise.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reasons that stop the same rules for want of the same key, printed together. */
record NotCheckedBlock(List<NotCheckedGroup> groups) {

  /** Places printed before the rest is only counted. */
  private static final int PLACES_SHOWN = 4;

  private record Key(List<String> rules, String key) {}

  /** The blocks, in the order in which their first reason stands in the review. */
  static List<NotCheckedBlock> of(List<NotCheckedGroup> groups) {
    Map<Key, List<NotCheckedGroup>> byRules = new LinkedHashMap<>();
    for (NotCheckedGroup group : groups) {
      Key key = new Key(group.rules(), key(group));
      byRules.computeIfAbsent(key, unseen -> new ArrayList<>()).add(group);
    }
    List<NotCheckedBlock> blocks = new ArrayList<>();
    byRules.values().forEach(same -> blocks.add(new NotCheckedBlock(same)));
    return blocks;
  }

  /** The key in brackets at the end of a reason; without one, the place where it would be. */
  private static String key(NotCheckedGroup group) {
    int start = group.reason().lastIndexOf(" (");
    boolean named = start >= 0 && group.reason().endsWith(")");
    return named ? group.reason().substring(start) : group.at().toString();
  }

  void write(Sheet sheet, int indent) {
    String mark = "-   ";
    Map<String, Integer> subjects = new LinkedHashMap<>();
    Set<Span> places = new LinkedHashSet<>();
    for (NotCheckedGroup group : groups) {
      subjects.merge(group.reason(), group.subjects(), Integer::sum);
      places.add(group.at());
    }
    subjects.forEach(
        (reason, count) -> sheet.marked(indent, mark, Role.PLAIN, reason + subjects(count)));
    int body = indent + mark.length();
    places.stream().limit(PLACES_SHOWN).forEach(at -> sheet.whole(body, Role.PLACE, at.toString()));
    if (places.size() > PLACES_SHOWN) {
      sheet.prose(body, Role.PLAIN, "and " + (places.size() - PLACES_SHOWN) + " more places");
    }
    sheet.labelled(body, "rules", groups.get(0).rulesInShort());
  }

  private static String subjects(int count) {
    return count == 1 ? "" : " (" + Counted.of(count, "subject") + ")";
  }
}
