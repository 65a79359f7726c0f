package clampwise.cli;

import clampwise.source.Nearest;
import clampwise.source.Node;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.Span;
import clampwise.source.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the user set for all runs. A file that a job or a repository brings along is never it. */
final class UserConfig {
  private static final String OWN_RULES = "own-rules";
  private static final List<String> KEYS = List.of(OWN_RULES);

  private final Path file;
  private final Node.Mapping keys;

  private UserConfig(Path file, Node.Mapping keys) {
    this.file = file;
    this.keys = keys;
  }

  /** The folder of own rules that it names, if it does. */
  static Optional<Path> ownRules(Map<String, String> environment) {
    Optional<Path> file = file(environment);
    return file.isPresent() && file.get().toFile().exists()
        ? read(file.get()).rulesFolder(environment)
        : Optional.empty();
  }

  /** The file that it stands in, which need not exist (XDG base directories where they hold). */
  static Optional<Path> file(Map<String, String> environment) {
    String xdg = environment.getOrDefault("XDG_CONFIG_HOME", "");
    String windows = environment.getOrDefault("APPDATA", "");
    String home = home(environment);
    boolean mac = System.getProperty("os.name", "").startsWith("Mac");
    String usual = home + (mac ? "/Library/Application Support" : "/.config");
    String base = isAbsolute(xdg) ? xdg : isAbsolute(windows) ? windows : usual;
    return isAbsolute(base)
        ? Optional.of(Path.of(base, CommandTree.PROGRAM, "config.yaml"))
        : Optional.empty();
  }

  /** A name that depends on the current folder could lead into a repository. */
  private static boolean isAbsolute(String path) {
    return !path.isEmpty() && Path.of(path).isAbsolute();
  }

  private static String home(Map<String, String> environment) {
    String home = environment.getOrDefault("HOME", "");
    return isAbsolute(home) ? home : System.getProperty("user.home", "");
  }

  private static UserConfig read(Path file) {
    Problems problems = new Problems();
    Optional<Node> root = Optional.empty();
    try {
      String text = Files.readString(file);
      root = text.isBlank() ? root : YamlReader.read(file.toString(), text, problems);
    } catch (IOException e) {
      problems.add(Problem.of(Span.startOf(file.toString()), "no text", "a readable file"));
    }
    Node.Mapping keys =
        root.filter(Node.Mapping.class::isInstance)
            .map(Node.Mapping.class::cast)
            .orElse(new Node.Mapping(List.of(), Span.startOf(file.toString())));
    UserConfig config = new UserConfig(file, keys);
    config.check(root, problems);
    return config;
  }

  private void check(Optional<Node> root, Problems problems) {
    if (root.isPresent() && !(root.get() instanceof Node.Mapping)) {
      problems.add(Problem.of(root.get().at(), "no key", "keys such as own-rules"));
    }
    for (Node.Entry entry : keys.entries()) {
      String key = entry.key().text();
      if (!KEYS.contains(key)) {
        Optional<String> near = Nearest.to(key, KEYS);
        String expected = "one of " + String.join(", ", KEYS);
        problems.add(new Problem(entry.key().at(), "unknown key " + key, expected, near));
      }
    }
    problems.sorted().stream().findFirst().ifPresent(UserConfig::refuse);
  }

  private static void refuse(Problem problem) {
    throw new UsageException(
        problem.at()
            + ": "
            + problem.found()
            + "; expected "
            + problem.expected()
            + Hint.of(problem.nearest()));
  }

  private Optional<Path> rulesFolder(Map<String, String> environment) {
    Optional<Node> value = keys.get(OWN_RULES);
    if (value.isPresent() && !(value.get() instanceof Node.Scalar)) {
      refuse(Problem.of(value.get().at(), "no folder", "the name of a folder"));
    }
    return value
        .map(Node.Scalar.class::cast)
        .filter(name -> !name.isEmpty() && !name.text().isBlank())
        .map(name -> folder(name.text(), environment));
  }

  /** A name that is not absolute is meant from the file on. */
  private Path folder(String name, Map<String, String> environment) {
    return name.startsWith("~/")
        ? Path.of(home(environment), name.substring(2))
        : file.resolveSibling(name).normalize();
  }
}
