package clampwise.repository;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.lib.CoreConfig;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;

/** A git repository with a working tree, only ever read, and without the git program. */
public final class GitRepository implements AutoCloseable {

  private final Repository git;
  private final Path root;
  private final DirCache index;

  private GitRepository(Repository git) throws IOException {
    this.git = git;
    this.root = git.getWorkTree().toPath().toRealPath();
    this.index = git.readDirCache();
  }

  /** The repository in whose working tree a folder lies, if it lies in one. */
  public static Optional<GitRepository> around(Path folder) throws IOException {
    QuietSystem.use();
    FileRepositoryBuilder found =
        new FileRepositoryBuilder().findGitDir(folder.toRealPath().toFile());
    if (found.getGitDir() == null) {
      return Optional.empty();
    }
    Repository git = found.setMustExist(true).build();
    return git.isBare() ? Optional.empty() : Optional.of(new GitRepository(git));
  }

  /** The topmost folder of its working tree. */
  public Path root() {
    return root;
  }

  /** Whether git knows a file, or something in a folder, whatever its ignore files say. */
  boolean tracks(Path real, boolean isFolder) {
    String path = pathOf(real);
    return isFolder ? index.getEntriesWithin(path).length > 0 : index.getEntry(path) != null;
  }

  /** The path of a file from the topmost folder on, as git writes it. */
  String pathOf(Path real) {
    return root.relativize(real).toString().replace(File.separatorChar, '/');
  }

  /** The file of the user, or of this repository alone, that says what is ignored everywhere. */
  Path excludes() {
    return git.getCommonDirectory().toPath().resolve("info/exclude");
  }

  /** The file of the user that says what is ignored in all repositories. */
  Optional<Path> excludesOfUser() {
    String file = git.getConfig().get(CoreConfig.KEY).getExcludesFile();
    if (file == null) {
      return Optional.ofNullable(System.getenv("XDG_CONFIG_HOME"))
          .filter(folder -> !folder.isEmpty())
          .or(() -> Optional.of(home() + "/.config"))
          .map(folder -> Path.of(folder, "git", "ignore"));
    }
    return Optional.of(Path.of(file.startsWith("~/") ? home() + file.substring(1) : file));
  }

  private static String home() {
    return System.getProperty("user.home", "");
  }

  Repository git() {
    return git;
  }

  @Override
  public void close() {
    git.close();
  }
}
