package clampwise.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reasons that stop the same rules and are cleared at the same place, printed together. */
record NotCheckedBlock(List<NotCheckedGroup> groups) {

  private record Key(Object at, List<String> rules) {}

  /** The blocks, in the order in which their first reason stands in the review. */
  static List<NotCheckedBlock> of(List<NotCheckedGroup> groups) {
    Map<Key, List<NotCheckedGroup>> byRules = new LinkedHashMap<>();
    for (NotCheckedGroup group : groups) {
      Key key = new Key(group.at(), group.rules());
      byRules.computeIfAbsent(key, unseen -> new ArrayList<>()).add(group);
    }
    List<NotCheckedBlock> blocks = new ArrayList<>();
    byRules.values().forEach(same -> blocks.add(new NotCheckedBlock(same)));
    return blocks;
  }

  void write(Sheet sheet, int indent) {
    String mark = "-   ";
    for (NotCheckedGroup group : groups) {
      sheet.marked(indent, mark, Role.PLAIN, group.reason() + subjects(group));
    }
    int body = indent + mark.length();
    sheet.whole(body, Role.PLACE, groups.get(0).at().toString());
    sheet.labelled(body, "rules", groups.get(0).rulesInShort());
  }

  private static String subjects(NotCheckedGroup group) {
    return group.subjects() == 1 ? "" : " (" + Counted.of(group.subjects(), "subject") + ")";
  }
}
