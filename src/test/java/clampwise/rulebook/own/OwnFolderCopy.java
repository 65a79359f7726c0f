package clampwise.rulebook.own;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Copies of the example folder in which mistakes can be made. */
public final class OwnFolderCopy {
  public static final Path EXAMPLE = Path.of("examples/own-rules");
  static final String GAP = "clamps/own-gap-below-15-mm.drl";

  private OwnFolderCopy() {}

  /** A copy below a folder. */
  public static Path below(Path folder) throws IOException {
    Path copy = folder.resolve("our-rules");
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      for (Path file : files.toList()) {
        Path target = copy.resolve(EXAMPLE.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
    return copy;
  }

  /** Puts one text in the place of another, which has to be there. */
  public static void change(Path file, String from, String to) throws IOException {
    String text = Files.readString(file);
    if (!text.contains(from)) {
      throw new AssertionError(file + " does not hold " + from);
    }
    Files.writeString(file, text.replace(from, to));
  }
}
