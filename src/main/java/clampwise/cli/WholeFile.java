package clampwise.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/**
 * Writes a file whole or not at all; what stood there before stays until the new one is complete. A
 * link stays a link, and a file keeps who may read it.
 */
final class WholeFile {

  private static final int MOST_LINKS = 40;

  /** How files end that are still written. */
  private static final String PART = ".part";

  private static final Duration DAY = Duration.ofDays(1);

  private WholeFile() {}

  /** Writes the content of a file. */
  @FunctionalInterface
  interface Content {
    void write(OutputStream out) throws IOException;
  }

  /** Writes text in UTF-8 under a name, in place of what stands there. */
  static void write(String name, CharSequence text) {
    write(name, out -> out.write(text.toString().getBytes(StandardCharsets.UTF_8)));
  }

  /** Writes a file under a name, in place of what stands there. */
  static void write(String name, Content content) {
    try {
      write(Path.of(name), content);
    } catch (InvalidPathException e) {
      throw new UsageException(name + " is not a file name here");
    } catch (IOException e) {
      throw new UsageException(name + " could not be written; choose a file you may write to");
    }
  }

  private static void write(Path named, Content content) throws IOException {
    checkFolder(named);
    Path file = behindLinks(named.toAbsolutePath());
    boolean exists = Files.exists(file);
    if (exists && (Files.isDirectory(file) || !Files.isWritable(file))) {
      throw new IOException("a folder or a file that may not be written");
    }
    if (exists && !Files.isRegularFile(file)) {
      fill(file, content);
      return;
    }
    removeAbandoned(file);
    Path part = file.resolveSibling(file.getFileName() + "." + UUID.randomUUID() + PART);
    Files.createFile(part);
    try {
      fill(part, content);
      keepPermissions(file, part);
      Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** What runs that were killed left of the same file, a day ago or by a clock that was wrong. */
  private static void removeAbandoned(Path file) throws IOException {
    String start = file.getFileName() + ".";
    Instant now = Instant.now();
    try (DirectoryStream<Path> parts =
        Files.newDirectoryStream(file.resolveSibling(""), "*" + PART)) {
      for (Path part : parts) {
        Duration age = Duration.between(Files.getLastModifiedTime(part).toInstant(), now).abs();
        if (String.valueOf(part.getFileName()).startsWith(start) && age.compareTo(DAY) > 0) {
          Files.deleteIfExists(part);
        }
      }
    } catch (NoSuchFileException | DirectoryIteratorException e) {
      // Another run removed it first, or the folder may not be listed.
    }
  }

  private static void fill(Path file, Content content) throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      content.write(out);
    }
  }

  /** Says that the folder of a file is missing, if it is. */
  static void checkFolder(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      throw new UsageException(
          "the folder of " + file + " does not exist; create it first or choose another");
    }
  }

  /** The file at the end of a chain of links, which need not exist yet. */
  static Path behindLinks(Path file) throws IOException {
    Path end = file;
    for (int links = 0; Files.isSymbolicLink(end); links++) {
      if (links == MOST_LINKS) {
        throw new IOException("links that end nowhere");
      }
      end = end.resolveSibling(Files.readSymbolicLink(end));
    }
    return end;
  }

  private static void keepPermissions(Path old, Path fresh) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(old, PosixFileAttributeView.class);
    if (view != null && Files.exists(old)) {
      Files.setPosixFilePermissions(fresh, view.readAttributes().permissions());
    }
  }
}
