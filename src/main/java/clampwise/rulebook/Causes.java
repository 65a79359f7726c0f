package clampwise.rulebook;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Sorts the facts that broke a rule by their causes. Fields that take a value from one another
 * ({@code like}) share the mistake in it: their causes count as one, that of the first field.
 */
final class Causes {

  private static final String FIELD = "fields.";

  /** The same part of any field, going back to the same written values. */
  private record Shared(String part, Set<Span> at) {}

  private Causes() {}

  static Map<Subject, List<Fact>> of(Collection<Fact> facts) {
    Map<Subject, List<Fact>> byCause =
        facts.stream()
            .collect(Collectors.groupingBy(Fact::cause, TreeMap::new, Collectors.toList()));
    Map<Shared, List<Fact>> first = new HashMap<>();
    Map<Subject, List<Fact>> merged = new TreeMap<>();
    byCause.forEach(
        (cause, own) -> {
          List<Fact> all = first.computeIfAbsent(shared(cause, own), key -> open(merged, cause));
          all.addAll(own);
        });
    return merged;
  }

  private static List<Fact> open(Map<Subject, List<Fact>> merged, Subject cause) {
    return merged.computeIfAbsent(cause, key -> new ArrayList<>());
  }

  private static Shared shared(Subject cause, List<Fact> facts) {
    Set<Span> at = facts.stream().map(Fact::at).collect(Collectors.toSet());
    return new Shared(part(cause.path()), at);
  }

  private static String part(String path) {
    int end = path.indexOf(Subject.SEPARATOR);
    return path.startsWith(FIELD) ? FIELD + (end < 0 ? "" : path.substring(end)) : path;
  }
}
