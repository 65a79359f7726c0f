package clampwise.repository;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.jgit.errors.RevisionSyntaxException;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.TreeWalk;

/**
 * The files of a repository as one revision has them: jobs and what lies beside them.
 *
 * @param repository the repository, which stays open with it
 * @param tree its files
 */
public record Revision(GitRepository repository, ObjectId tree) implements AutoCloseable {

  private static final List<String> ENDINGS = List.of(".yaml", ".yml", ".json", ".csv");

  /** More is no job and would only fill the memory [bytes]. */
  private static final long LARGEST = 11L * 1024 * 1024;

  /**
   * A revision of the repository around a folder.
   *
   * @param name a branch, a tag, a commit, or anything else that git takes for a revision
   * @return empty where there is no repository or no such revision
   */
  public static Optional<Revision> of(Path folder, String name) throws IOException {
    Optional<GitRepository> around = GitRepository.around(folder);
    if (around.isEmpty()) {
      return Optional.empty();
    }
    Optional<ObjectId> tree = tree(around.get().git(), name);
    if (tree.isEmpty()) {
      around.get().close();
    }
    return tree.map(found -> new Revision(around.get(), found));
  }

  private static Optional<ObjectId> tree(Repository git, String name) throws IOException {
    try (RevWalk walk = new RevWalk(git)) {
      ObjectId commit = git.resolve(name + "^{commit}");
      return commit == null
          ? Optional.empty()
          : Optional.of(walk.parseCommit(commit).getTree().getId());
    } catch (RevisionSyntaxException e) {
      return Optional.empty();
    }
  }

  /** Whether it has a file or a folder, named from the root of the repository. */
  public boolean has(String path) throws IOException {
    if (path.isEmpty()) {
      return true;
    }
    try (TreeWalk walk = TreeWalk.forPath(repository.git(), path, tree)) {
      return walk != null;
    }
  }

  /** Whether that is a folder. */
  public boolean isFolder(String path) throws IOException {
    if (path.isEmpty()) {
      return true;
    }
    try (TreeWalk walk = TreeWalk.forPath(repository.git(), path, tree)) {
      return walk != null && walk.isSubtree();
    }
  }

  /** Writes all files that reviews read into a folder, with the folders in which they lie. */
  public void writeTo(Path folder) throws IOException {
    try (TreeWalk walk = new TreeWalk(repository.git())) {
      walk.addTree(tree);
      walk.setRecursive(true);
      while (walk.next()) {
        if (isRead(walk.getPathString()) && isFile(walk.getFileMode(0))) {
          write(walk, folder);
        } else if (walk.getFileMode(0) == FileMode.SYMLINK) {
          link(walk, folder);
        }
      }
    }
  }

  private void write(TreeWalk walk, Path folder) throws IOException {
    Path file = folder.resolve(walk.getPathString()).normalize();
    long size = repository.git().open(walk.getObjectId(0)).getSize();
    if (file.startsWith(folder) && size <= LARGEST) {
      Files.createDirectories(file.getParent());
      Files.write(file, repository.git().open(walk.getObjectId(0)).getBytes());
    }
  }

  /** Links out of the repository lead to nothing that a revision has. */
  private void link(TreeWalk walk, Path folder) throws IOException {
    Path file = folder.resolve(walk.getPathString()).normalize();
    byte[] bytes = repository.git().open(walk.getObjectId(0)).getBytes();
    Path target = Path.of(new String(bytes, StandardCharsets.UTF_8));
    boolean inside = file.resolveSibling(target).normalize().startsWith(folder);
    if (file.startsWith(folder) && !target.isAbsolute() && inside) {
      Files.createDirectories(file.getParent());
      Files.createSymbolicLink(file, target);
    }
  }

  private static boolean isFile(FileMode mode) {
    return mode == FileMode.REGULAR_FILE || mode == FileMode.EXECUTABLE_FILE;
  }

  private static boolean isRead(String path) {
    String small = path.toLowerCase(Locale.ROOT);
    return ENDINGS.stream().anyMatch(small::endsWith);
  }

  /** The path of a file from the root of the repository on, as git writes it. */
  public String pathOf(Path file) throws IOException {
    Path real = file.toAbsolutePath().normalize();
    Path root = repository.root();
    Path parent = real.getParent();
    Path known =
        parent != null && Files.exists(parent)
            ? parent.toRealPath().resolve(real.getFileName())
            : real;
    return known.equals(root) ? "" : repository.pathOf(known);
  }

  @Override
  public void close() {
    repository.close();
  }
}
