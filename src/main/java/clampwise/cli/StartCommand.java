package clampwise.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** {@code clampwise start}: writes a small commented job to begin with. */
final class StartCommand {

  private static final String STARTER = "starter.yaml";

  private final Console console;

  StartCommand(Console console) {
    this.console = console;
  }

  /** Writes the starter to a file that does not exist yet, or prints it for {@code -}. */
  int run(String file) {
    if (file.equals("-")) {
      console.print(Resources.text(STARTER));
    } else {
      write(path(file));
      console.print(
          file + " is written. Next: change it to your roof, then clampwise review " + file + "\n");
    }
    return ExitCode.CLEAR;
  }

  private static Path path(String file) {
    try {
      return Path.of(file);
    } catch (InvalidPathException e) {
      throw new UsageException(file + " is not a file name here");
    }
  }

  private static void write(Path file) {
    try {
      writeNew(file);
    } catch (FileAlreadyExistsException e) {
      throw new UsageException(file + " exists already and is left as it is; choose another name");
    } catch (NoSuchFileException e) {
      throw new UsageException(
          "the folder of " + file + " does not exist; create it first or choose another");
    } catch (IOException e) {
      throw new UsageException(file + " could not be written; choose a folder you may write to");
    }
  }

  /** Either the whole file appears under its name or nothing does. */
  private static void writeNew(Path file) throws IOException {
    byte[] text = Resources.text(STARTER).getBytes(StandardCharsets.UTF_8);
    Files.createFile(file);
    try {
      Files.write(file, text);
    } catch (IOException e) {
      Files.deleteIfExists(file);
      throw e;
    }
  }
}
