package clampwise.repository;

import clampwise.source.Problem;
import clampwise.source.SourceFiles;
import clampwise.source.Span;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Looks for files in a folder and those below it. Links to folders are not followed, as git does
 * not follow them; {@code .git} is never entered.
 */
final class FolderWalk {

  private static final String GIT = ".git";

  private final Path start;
  private final Predicate<Path> wanted;
  private final int depth;
  private final List<Path> found = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private int ignored;

  /**
   * A walk that has yet to be gone.
   *
   * @param start where it begins
   * @param wanted which files are looked for, by their path from there on
   * @param depth how deep they can lie; 1 is the folder itself
   */
  FolderWalk(Path start, Predicate<Path> wanted, int depth) {
    this.start = start;
    this.wanted = wanted;
    this.depth = depth;
  }

  /** What git says of a folder: nothing where it lies in no repository. */
  private record State(Optional<GitRepository> repository, Optional<Ignoring> rules, boolean out) {

    private static final State NO_GIT = new State(Optional.empty(), Optional.empty(), false);

    static State of(GitRepository repository, Path real) throws IOException {
      Path at = repository.root();
      Ignoring rules = Ignoring.in(repository);
      boolean out = false;
      for (Path name : at.equals(real) ? List.<Path>of() : at.relativize(real)) {
        at = at.resolve(name);
        out |= rules.ignores(at, true);
        rules = rules.below(at);
      }
      return new State(Optional.of(repository), Optional.of(rules), out);
    }

    State below(Path real, boolean ignored) throws IOException {
      if (rules.isEmpty()) {
        return this;
      }
      return new State(repository, Optional.of(rules.get().below(real)), out || ignored);
    }

    /** Whether git leaves out a file or a whole folder: one it tracks is never left out. */
    boolean leavesOut(Path real, boolean isFolder) {
      boolean ignored = out || rules.map(all -> all.ignores(real, isFolder)).orElse(false);
      return ignored && !repository.map(git -> git.tracks(real, isFolder)).orElse(false);
    }

    boolean ignores(Path real) {
      return rules.map(all -> all.ignores(real, true)).orElse(false);
    }
  }

  /** Goes it. */
  FolderWalk go() {
    try {
      walkIn(start, start.toRealPath());
    } catch (IOException e) {
      unreadable(start);
    }
    return this;
  }

  /** The files that were found, in no order. */
  List<Path> found() {
    return found;
  }

  /** Folders that could not be read. */
  List<Problem> problems() {
    return problems;
  }

  /** How many files were left out because git ignores them or their folder. */
  int ignored() {
    return ignored;
  }

  /** A folder whose repository has yet to be found. */
  private void walkIn(Path folder, Path real) throws IOException {
    try (GitRepository repository = GitRepository.around(real).orElse(null)) {
      walk(folder, real, repository == null ? State.NO_GIT : State.of(repository, real));
    }
  }

  private void walk(Path folder, Path real, State state) throws IOException {
    List<Path> entries = new ArrayList<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(real)) {
      all.forEach(entries::add);
    } catch (IOException | DirectoryIteratorException e) {
      unreadable(folder);
      return;
    }
    for (Path entry : entries) {
      Path named = folder.resolve(entry.getFileName());
      if (Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
        enter(named, entry, state);
      } else if (wanted.test(start.relativize(named)) && Files.isRegularFile(entry)) {
        take(named, state.leavesOut(entry, false));
      }
    }
  }

  private void enter(Path named, Path real, State state) throws IOException {
    boolean deep = start.relativize(named).getNameCount() >= depth;
    if (deep || String.valueOf(real.getFileName()).equals(GIT)) {
      return;
    }
    if (state.leavesOut(real, true)) {
      ignored++;
    } else if (Files.exists(real.resolve(GIT))) {
      walkIn(named, real);
    } else {
      walk(named, real, state.below(real, state.ignores(real)));
    }
  }

  private void take(Path named, boolean leftOut) {
    if (leftOut) {
      ignored++;
    } else {
      found.add(named);
    }
  }

  private void unreadable(Path folder) {
    problems.add(
        Problem.of(
            Span.startOf(SourceFiles.nameOf(folder)),
            "a folder that cannot be read",
            "permission to read it"));
  }
}
