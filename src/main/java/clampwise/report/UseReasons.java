package clampwise.report;

import clampwise.facts.Missing;
import clampwise.facts.loads.AttachmentUse;
import clampwise.finding.Subject;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Why the strength of attachments was not checked, or not in full. */
final class UseReasons {

  private static final String ATTACHMENT = Subject.SEPARATOR + "attachment ";

  /** By field, and by attachment or part of a field. */
  private final Map<String, Set<String>> reasons = new HashMap<>();

  UseReasons(List<Missing> missing) {
    for (Missing one : missing) {
      if (one.question().equals(AttachmentUse.class)) {
        reasons.computeIfAbsent(key(one), unseen -> new LinkedHashSet<>()).add(one.reason());
      }
    }
  }

  private static String key(Missing one) {
    String field = one.subject().first();
    String rest = one.subject().path().substring(field.length());
    if (!rest.startsWith(ATTACHMENT)) {
      return field;
    }
    String name = rest.substring(ATTACHMENT.length());
    int end = name.indexOf(Subject.SEPARATOR);
    return key(field, end < 0 ? name : name.substring(0, end));
  }

  private static String key(String field, String name) {
    return field + ATTACHMENT + name;
  }

  /**
   * The reasons for one attachment.
   *
   * @param part the part that it is, empty if that is not known
   */
  Set<String> of(Subject field, String attachment, String part) {
    Set<String> all = new LinkedHashSet<>(reasons.getOrDefault(field.path(), Set.of()));
    all.addAll(reasons.getOrDefault(key(field.path(), attachment), Set.of()));
    all.addAll(reasons.getOrDefault(key(field.path(), part), Set.of()));
    return all;
  }
}
