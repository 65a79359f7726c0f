package clampwise.rulebook.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The folder with the rules, their pages and the base jobs of their examples. */
public record RuleFolder(Path root) {
  private static final String BASE_JOBS = "base";

  /** All rules in order of their file names. */
  public List<RuleText> rules() throws IOException {
    List<RuleText> rules = new ArrayList<>();
    for (Path file : files(".drl")) {
      rules.add(new RuleText(relative(file), Files.readString(file)));
    }
    return rules;
  }

  /** All rule pages in order of their file names. */
  public List<Path> pages() throws IOException {
    return files(".md");
  }

  /** The base jobs in order of their names. */
  public List<Path> bases() throws IOException {
    try (Stream<Path> all = Files.list(root.resolve(BASE_JOBS))) {
      return all.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /** The page of a rule. */
  public Path page(RuleText rule) {
    return root.resolve(rule.topic()).resolve(rule.id() + ".md");
  }

  private List<Path> files(String ending) throws IOException {
    if (!Files.isDirectory(root)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(root, 2)) {
      return all.filter(file -> file.toString().endsWith(ending))
          .filter(this::inTopic)
          .sorted()
          .toList();
    }
  }

  private boolean inTopic(Path file) {
    Path within = root.relativize(file);
    return within.getNameCount() == 2 && !within.startsWith(BASE_JOBS);
  }

  private String relative(Path file) {
    return root.relativize(file).toString().replace('\\', '/');
  }
}
