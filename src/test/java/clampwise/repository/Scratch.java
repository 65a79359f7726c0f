package clampwise.repository;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.dircache.DirCacheBuilder;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectInserter;

/** A folder of small files for tests, which may become a git repository. */
public record Scratch(Path folder) {

  /** A file with a text, in folders that are made for it. */
  public Scratch file(String name, String text) {
    try {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Files that hold their names. */
  public Scratch files(String... names) {
    for (String name : names) {
      file(name, name);
    }
    return this;
  }

  /** The path of a file. */
  public String path(String name) {
    return folder.resolve(name).toString();
  }

  /** Makes it a repository. */
  public Scratch init() {
    QuietSystem.use();
    try (Git git = Git.init().setDirectory(folder.toFile()).call()) {
      git.getRepository().getConfig().setString("user", null, "name", "Tester");
      git.getRepository().getConfig().setString("user", null, "email", "tester@example.org");
      git.getRepository().getConfig().save();
      return this;
    } catch (GitAPIException | IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Commits all that is not ignored and answers the name of the commit. */
  public String commit() {
    try (Git git = Git.open(folder.toFile())) {
      git.add().addFilepattern(".").call();
      git.add().addFilepattern(".").setUpdate(true).call();
      return git.commit().setMessage("A state").setSign(false).call().getName();
    } catch (GitAPIException | IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Has git track a file, even one that is ignored. */
  public Scratch track(String name) {
    try (Git git = Git.open(folder.toFile());
        ObjectInserter objects = git.getRepository().newObjectInserter()) {
      DirCacheEntry entry = new DirCacheEntry(name);
      entry.setFileMode(FileMode.REGULAR_FILE);
      entry.setObjectId(objects.insert(Constants.OBJ_BLOB, new byte[0]));
      DirCacheBuilder builder = git.getRepository().lockDirCache().builder();
      builder.add(entry);
      builder.commit();
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
