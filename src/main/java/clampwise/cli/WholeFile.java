package clampwise.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Writes a file whole or not at all; what stood there before stays until the new one is complete.
 */
final class WholeFile {

  private WholeFile() {}

  /** Writes text in UTF-8 under a name, in place of what stands there. */
  static void write(String name, CharSequence text) {
    try {
      write(Path.of(name), text);
    } catch (InvalidPathException e) {
      throw new UsageException(name + " is not a file name here");
    } catch (NoSuchFileException e) {
      throw new UsageException(
          "the folder of " + name + " does not exist; create it first or choose another");
    } catch (IOException e) {
      throw new UsageException(name + " could not be written; choose a file you may write to");
    }
  }

  private static void write(Path file, CharSequence text) throws IOException {
    if (Files.isDirectory(file)) {
      throw new IOException("a folder");
    }
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new NoSuchFileException(file.toString());
    }
    Path part = Files.createTempFile(folder, "clampwise", ".part");
    try {
      Files.writeString(part, text, StandardCharsets.UTF_8);
      Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(part);
    }
  }
}
