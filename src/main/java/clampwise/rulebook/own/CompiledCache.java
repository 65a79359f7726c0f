package clampwise.rulebook.own;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Compiled rules by their fingerprint. They are code, so they are only taken from a folder that
 * belongs to who runs the program and that nobody else may look into.
 */
final class CompiledCache {
  private static final Set<PosixFilePermission> PRIVATE =
      PosixFilePermissions.fromString("rwx------");
  private static final String ENDING = ".rules";

  /** So many foldersful of rules are kept, the newest ones. */
  private static final int MOST = 30;

  private final Path folder;

  CompiledCache(Path folder) {
    this.folder = folder;
  }

  /** What was kept, if it is there and whole. */
  Optional<Map<String, byte[]>> find(String digest) {
    Path file = file(digest);
    try {
      return isPrivate() && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          ? PackedClasses.unpack(Files.readAllBytes(file))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Keeps it for the next time; says why not where that cannot be. */
  Optional<String> keep(String digest, Map<String, byte[]> made) {
    try {
      create();
      if (!isPrivate()) {
        return Optional.of(
            "others may write into " + folder + "; it has to belong to you alone (chmod 700)");
      }
      write(file(digest), PackedClasses.pack(made));
      prune();
      return Optional.empty();
    } catch (IOException | UnsupportedOperationException e) {
      return Optional.of("the folder " + folder + " cannot be written");
    }
  }

  private Path file(String digest) {
    return folder.resolve(digest + ENDING);
  }

  private void create() throws IOException {
    if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    Files.createDirectories(folder.resolveSibling(""));
    try {
      Files.createDirectory(folder, privately());
    } catch (FileAlreadyExistsException e) {
      if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
        throw e;
      }
    }
  }

  private FileAttribute<?>[] privately() {
    return isPosix()
        ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PRIVATE)}
        : new FileAttribute<?>[0];
  }

  private boolean isPosix() {
    return folder.getFileSystem().supportedFileAttributeViews().contains("posix");
  }

  /** Elsewhere the user's local data are private without our help. */
  private boolean isPrivate() throws IOException {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    if (!isPosix()) {
      return true;
    }
    PosixFileAttributes known =
        Files.readAttributes(folder, PosixFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    return PRIVATE.containsAll(known.permissions())
        && known
            .owner()
            .equals(
                folder
                    .getFileSystem()
                    .getUserPrincipalLookupService()
                    .lookupPrincipalByName(System.getProperty("user.name", "")));
  }

  private static void write(Path file, byte[] content) throws IOException {
    Path part = Files.createTempFile(file.resolveSibling(""), "part", ".tmp");
    try {
      Files.write(part, content);
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  private void prune() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      List<Path> files =
          all.filter(file -> file.toString().endsWith(ENDING))
              .sorted(Comparator.comparingLong(CompiledCache::age))
              .toList();
      for (Path old : files.subList(Math.min(MOST, files.size()), files.size())) {
        Files.deleteIfExists(old);
      }
    }
  }

  /** Least for the newest. */
  private static long age(Path file) {
    return -file.toFile().lastModified();
  }
}
