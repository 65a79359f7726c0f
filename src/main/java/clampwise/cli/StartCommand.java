package clampwise.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** {@code clampwise start}: writes a small commented job to begin with. */
final class StartCommand {

  private static final String STARTER = "starter.yaml";

  /** What no shell changes in a word; Windows parts folders by the last two. */
  private static final String SAFE = "-_./+@%,:\\";

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
          file
              + " is written. Next: change it to your roof, then clampwise review "
              + forShell(file)
              + "\n");
    }
    return ExitCode.CLEAR;
  }

  /** A name as it is typed: in quotes where a shell would cut or change it. */
  private static String forShell(String file) {
    boolean plain =
        file.chars().allMatch(c -> Character.isLetterOrDigit(c) || SAFE.indexOf(c) >= 0);
    return plain ? file : "\"" + file.replaceAll("([\"$`\\\\])", "\\\\$1") + "\"";
  }

  private static Path path(String file) {
    try {
      return Path.of(file);
    } catch (InvalidPathException e) {
      throw new UsageException(file + " is not a file name here");
    }
  }

  private static void write(Path file) {
    WholeFile.checkFolder(file);
    try {
      writeNew(file);
    } catch (FileAlreadyExistsException e) {
      throw new UsageException(file + " exists already and is left as it is; choose another name");
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
