package clampwise.repository;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.treewalk.TreeWalk;

/**
 * What is different in a working tree from a revision: committed since, staged, neither, or unknown
 * to git. How lines end makes no difference. May be asked by several threads.
 */
public final class Changes implements AutoCloseable {

  private final GitRepository repository;
  private final ObjectId tree;

  private Changes(GitRepository repository, ObjectId tree) {
    this.repository = repository;
    this.tree = tree;
  }

  /**
   * The changes of the repository around a folder.
   *
   * @param revision a commit, branch or tag, as git writes it
   */
  public static Changes since(String revision, Path folder) throws RevisionException {
    try {
      GitRepository repository =
          GitRepository.around(folder)
              .orElseThrow(() -> new RevisionException(folder + " lies in no git repository"));
      return new Changes(repository, tree(revision, repository));
    } catch (IOException e) {
      throw new RevisionException("the git repository around " + folder + " cannot be read");
    }
  }

  private static ObjectId tree(String revision, GitRepository repository)
      throws RevisionException, IOException {
    Optional<ObjectId> tree = Optional.empty();
    try {
      tree = Optional.ofNullable(repository.git().resolve(revision + "^{tree}"));
    } catch (IOException | RuntimeException e) {
      // Said below in the same words: no such revision, or a word that cannot be one.
    }
    return tree.orElseThrow(() -> unknown(revision, repository));
  }

  private static RevisionException unknown(String revision, GitRepository repository) {
    return new RevisionException(
        "there is no revision "
            + revision
            + " in the git repository "
            + repository.root()
            + "; a shallow clone may lack it");
  }

  /** The topmost folder of the working tree. */
  public Path root() {
    return repository.root();
  }

  /** Whether a file, which may be gone, is not what it was. */
  public boolean touches(Path file) throws IOException {
    Path real = realFolder(file).resolve(String.valueOf(file.getFileName()));
    if (!real.startsWith(root())) {
      return Files.exists(real);
    }
    try (TreeWalk was = TreeWalk.forPath(repository.git(), repository.pathOf(real), tree)) {
      boolean is = Files.exists(real, LinkOption.NOFOLLOW_LINKS);
      if (was == null || !is) {
        return is || was != null;
      }
      return differs(real, was) || Files.isSymbolicLink(real) && targetDiffers(real);
    }
  }

  /** The folder of a file, over all links; the file and the folder need not exist. */
  private static Path realFolder(Path file) throws IOException {
    Path folder = file.toAbsolutePath().normalize().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      return folder == null ? file.toAbsolutePath() : folder;
    }
    return folder.toRealPath();
  }

  private boolean targetDiffers(Path link) throws IOException {
    return !Files.exists(link) || touches(link.toRealPath());
  }

  private static boolean differs(Path real, TreeWalk was) throws IOException {
    boolean link = Files.isSymbolicLink(real);
    boolean wasLink = was.getFileMode() == FileMode.SYMLINK;
    if (was.isSubtree() || link != wasLink || !link && !Files.isRegularFile(real)) {
      return true;
    }
    byte[] now =
        link
            ? Files.readSymbolicLink(real).toString().getBytes(StandardCharsets.UTF_8)
            : Files.readAllBytes(real);
    ObjectId then = was.getObjectId(0);
    return !then.equals(id(now)) && !then.equals(id(withoutReturns(now)));
  }

  private static ObjectId id(byte[] bytes) {
    try (ObjectInserter names = new ObjectInserter.Formatter()) {
      return names.idFor(Constants.OBJ_BLOB, bytes);
    }
  }

  /** The lines as git keeps them where it is told to change their ends. */
  private static byte[] withoutReturns(byte[] text) {
    return new String(text, StandardCharsets.ISO_8859_1)
        .replace("\r\n", "\n")
        .getBytes(StandardCharsets.ISO_8859_1);
  }

  @Override
  public void close() {
    repository.close();
  }
}
