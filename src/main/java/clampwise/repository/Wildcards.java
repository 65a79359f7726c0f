package clampwise.repository;

import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.PatternSyntaxException;

/**
 * A pattern of paths, as shells know them: {@code *} and {@code ?} stay within a name, {@code **}
 * stands for any number of folders, {@code [a-c]} and {@code {a,b}} choose. None of them stands for
 * a point at the start of a name.
 */
final class Wildcards {

  private static final String FOLDERS = "**";

  private final String folder;
  private final List<String> names;
  private final List<PathMatcher> matchers = new ArrayList<>();

  private Wildcards(String folder, List<String> names) {
    this.folder = folder;
    this.names = names;
    for (String name : names) {
      matchers.add(FileSystems.getDefault().getPathMatcher("glob:" + name));
    }
  }

  /** Whether a word holds a sign that stands for others. */
  static boolean isPattern(String word) {
    return word.chars().anyMatch(sign -> "*?[{".indexOf(sign) >= 0);
  }

  /** The pattern of a word; a sign that is not closed stands for itself. */
  static Wildcards of(String word) {
    List<String> parts = List.of(word.split("/", -1));
    int fixed = 0;
    while (fixed < parts.size() - 1 && !isPattern(parts.get(fixed))) {
      fixed++;
    }
    String folder = String.join("/", parts.subList(0, fixed));
    List<String> names = parts.subList(fixed, parts.size());
    try {
      return new Wildcards(fixed > 0 && folder.isEmpty() ? "/" : folder, names);
    } catch (PatternSyntaxException e) {
      return new Wildcards(folder, names.stream().map(Wildcards::literally).toList());
    }
  }

  private static String literally(String name) {
    return name.replaceAll("([\\[{])", "\\\\$1");
  }

  /** The folder above the first name that holds a sign. */
  String folder() {
    return folder;
  }

  /** How many folders deep a match can lie. */
  int depth() {
    return names.contains(FOLDERS) ? Integer.MAX_VALUE : names.size();
  }

  /** Whether a path, from the folder on, matches. */
  boolean matches(Path path) {
    return matches(path, 0, 0);
  }

  private boolean matches(Path path, int at, int name) {
    if (name == names.size()) {
      return at == path.getNameCount();
    }
    if (names.get(name).equals(FOLDERS)) {
      return matches(path, at, name + 1)
          || at < path.getNameCount() && !isHidden(path, at) && matches(path, at + 1, name);
    }
    return at < path.getNameCount()
        && (!isHidden(path, at) || names.get(name).startsWith("."))
        && matchers.get(name).matches(path.getName(at))
        && matches(path, at + 1, name + 1);
  }

  private static boolean isHidden(Path path, int at) {
    return path.getName(at).toString().startsWith(".");
  }
}
