package clampwise.cli;

import clampwise.repository.GitRepository;
import clampwise.repository.Revision;
import clampwise.source.SourceFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One side of a comparison: a file or a folder, as it lies on disk or as a revision has it.
 *
 * @param path where it lies, perhaps for the time of the comparison only
 * @param written the folder that holds a revision's files for that time
 * @param shown what stands for that folder where files are named
 */
record ComparedSide(Path path, Optional<Path> written, String shown) implements AutoCloseable {

  /** A path on disk. */
  static ComparedSide of(Path path) {
    return new ComparedSide(path, Optional.empty(), "");
  }

  /** Whether a word names something on disk. */
  static boolean isThere(String word) {
    try {
      return Files.exists(Path.of(word));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /** A path from the root of the repository on, as git takes {@code REV:PATH}. */
  static ComparedSide fromRoot(String name, String path) {
    return of(name, root().resolve(path));
  }

  /** The root of the repository around the working folder; that folder where there is none. */
  static Path root() {
    Path here = Path.of("");
    try (GitRepository around = GitRepository.around(here).orElse(null)) {
      return around == null ? here : around.root();
    } catch (IOException e) {
      return here;
    }
  }

  /**
   * A path as a revision has it.
   *
   * @param name the revision
   * @param path the file or folder, from the working folder
   */
  static ComparedSide of(String name, Path path) {
    Path start = existing(path.toAbsolutePath().normalize());
    try (Revision revision = Revision.of(start, name).orElseThrow(() -> unknown(name))) {
      String inside = revision.pathOf(path);
      if (!revision.has(inside)) {
        throw new UsageException(name + " has no " + inside);
      }
      Path folder = Files.createTempDirectory("clampwise-revision").toRealPath();
      // Policies are looked for no further up than the root of the repository.
      Files.createDirectory(folder.resolve(".git"));
      revision.writeTo(folder);
      return new ComparedSide(folder.resolve(inside), Optional.of(folder), name + ":");
    } catch (IOException e) {
      throw new UsageException("the repository around " + path + " cannot be read");
    }
  }

  private static Path existing(Path path) {
    Path at = path;
    while (at.getParent() != null && !Files.isDirectory(at)) {
      at = at.getParent();
    }
    return at;
  }

  private static UsageException unknown(String name) {
    return new UsageException(
        name + " is neither a file nor a revision of the git repository here");
  }

  /** A text in which files of the revision are named as git names them. */
  String named(String text) {
    return written
        .map(folder -> text.replace(SourceFiles.nameOf(folder) + "/", shown))
        .orElse(text);
  }

  @Override
  public void close() {
    written.ifPresent(ComparedSide::delete);
  }

  private static void delete(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
