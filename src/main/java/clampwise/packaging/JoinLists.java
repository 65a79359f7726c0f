package clampwise.packaging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;

/** Joins the lists of classes that several runs loaded, so that the archive serves them all. */
public final class JoinLists {

  private JoinLists() {}

  /** Takes the lists; the first of them becomes the whole. */
  public static void main(String[] files) throws IOException {
    Set<String> lines = new LinkedHashSet<>();
    for (String file : files) {
      lines.addAll(Files.readAllLines(Path.of(file)));
    }
    Files.write(Path.of(files[0]), lines);
  }
}
