package clampwise.job;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What is written in a job but could not be read: its absence from the job's records means nothing.
 *
 * @param paths keys from the root of the job down to each such value
 * @param keys where everything stands that is written
 */
public record Unreadable(Set<List<String>> paths, Keys keys) {

  /** Nothing: all that is written could be read. */
  public static final Unreadable NOTHING = new Unreadable(Set.of(), Keys.NONE);

  public Unreadable {
    paths = Set.copyOf(paths);
  }

  /** This, and more that could not be read. */
  Unreadable and(Set<List<String>> more) {
    Set<List<String>> all = new HashSet<>(paths);
    all.addAll(more);
    return new Unreadable(all, keys);
  }

  /** Whether a value, something in it or something that holds it could not be read. */
  public boolean touches(String... path) {
    return touches(List.of(path));
  }

  /** Whether a value as a whole, or something that holds it, could not be read. */
  public boolean holds(String... path) {
    return paths.stream().anyMatch(lost -> startsWith(List.of(path), lost));
  }

  /** Whether a whole section could not be read, of which nobody knows what it was to be. */
  public boolean hasSection() {
    if (paths.isEmpty()) {
      return false;
    }
    Set<String> known = Shape.of(Job.class).byKey().keySet();
    return paths.stream().anyMatch(path -> path.size() == 1 && !known.contains(path.get(0)));
  }

  /** Says that something is not given, or that it could not be read where it is. */
  public String missing(String what, String... path) {
    return unwritten(what + (isMany(what) ? " are" : " is") + " not given", what, path);
  }

  /** Whether the words begin with several of something, such as "the strings of field A". */
  private static boolean isMany(String what) {
    String rest = what.startsWith("the ") ? what.substring("the ".length()) : "";
    int end = rest.indexOf(' ');
    String noun = end < 0 ? rest : rest.substring(0, end);
    return noun.endsWith("s") && !noun.endsWith("ss");
  }

  /**
   * Says that something could not be read, or what else is to be said where nobody wrote it, with
   * the key to write.
   */
  public String unwritten(String unwritten, String what, String... path) {
    return touches(path) ? what + " could not be read" : KeyPath.behind(unwritten, List.of(path));
  }

  private boolean touches(List<String> path) {
    return paths.stream().anyMatch(lost -> startsWith(lost, path) || startsWith(path, lost));
  }

  private static boolean startsWith(List<String> path, List<String> start) {
    return path.size() >= start.size() && path.subList(0, start.size()).equals(start);
  }
}
