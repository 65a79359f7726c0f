package clampwise.repository;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.jgit.ignore.IgnoreNode;

/**
 * What git ignores in one folder of a working tree: the rules of its own ignore file, then those of
 * the folders above, then those of the repository and of the user; the first that decides holds.
 */
final class Ignoring {

  private static final String RULES = ".gitignore";

  private final Path folder;
  private final IgnoreNode rules;
  private final Optional<Ignoring> outer;

  private Ignoring(Path folder, Path file, Optional<Ignoring> outer) throws IOException {
    this.folder = folder;
    this.rules = read(file);
    this.outer = outer;
  }

  /** What is ignored in the topmost folder of a repository. */
  static Ignoring in(GitRepository repository) throws IOException {
    Path root = repository.root();
    Optional<Ignoring> outer = Optional.empty();
    Optional<Path> ofUser = repository.excludesOfUser();
    if (ofUser.isPresent()) {
      outer = Optional.of(new Ignoring(root, ofUser.get(), outer));
    }
    return new Ignoring(root, repository.excludes(), outer).below(root);
  }

  /** What is ignored one folder further down. */
  Ignoring below(Path real) throws IOException {
    return new Ignoring(real, real.resolve(RULES), Optional.of(this));
  }

  private static IgnoreNode read(Path file) throws IOException {
    IgnoreNode node = new IgnoreNode();
    if (Files.isRegularFile(file)) {
      try (InputStream in = Files.newInputStream(file)) {
        node.parse(file.toString(), in);
      }
    }
    return node;
  }

  /** Whether a file or folder in this folder is ignored by a rule of its own name. */
  boolean ignores(Path real, boolean isFolder) {
    String path = folder.relativize(real).toString().replace('\\', '/');
    Boolean decided = rules.checkIgnored(path, isFolder);
    return decided != null
        ? decided
        : outer.map(above -> above.ignores(real, isFolder)).orElse(false);
  }
}
