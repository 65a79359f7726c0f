package clampwise.rulebook.example;

import clampwise.rulebook.RuleIndex;
import clampwise.source.Nearest;
import clampwise.source.Node;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The jobs that examples are laid over: those of a folder first, then those that ship. */
public final class BaseJobs {
  private static final String ENDING = ".yaml";

  private final Optional<Path> folder;

  /** With base jobs of one's own, if there are any. */
  public BaseJobs(Optional<Path> folder) {
    this.folder = folder;
  }

  /** The names of those that ship. */
  public static List<String> shipped() {
    return RuleIndex.lines(RuleIndex.BASES);
  }

  /** The values of a base job, each at its place. */
  Node tree(String name) {
    Problems problems = new Problems();
    return YamlReader.read(name + ENDING, text(name), problems)
        .filter(read -> problems.isEmpty())
        .orElseThrow(() -> new UnusableExample("the base job " + name + " cannot be read"));
  }

  private String text(String name) {
    Optional<Path> own =
        folder.map(base -> base.resolve(name + ENDING)).filter(Files::isRegularFile);
    try {
      return own.isPresent() ? Files.readString(own.get()) : packed(name);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String packed(String name) {
    if (!shipped().contains(name)) {
      String near = Nearest.to(name, shipped()).map(one -> "; nearest: " + one).orElse("");
      throw new UnusableExample(
          name.isEmpty()
              ? "its first line names no base job, such as # base: seam-roof"
              : "there is no base job " + name + near);
    }
    return RuleIndex.text(RuleIndex.BASE + name + ENDING).orElse("");
  }
}
