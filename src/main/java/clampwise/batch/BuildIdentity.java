package clampwise.batch;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/**
 * Which build of the program this is: a digest of everything in it, so that two builds that could
 * judge differently are never taken for one another, whatever their version says.
 */
public final class BuildIdentity {

  private static final String LIBRARIES = "clampwise-libraries.jar";

  private BuildIdentity() {}

  /** The digest of the program and of the Java that runs it. */
  public static String read() {
    List<String> words = new ArrayList<>(List.of(System.getProperty("java.vm.version", "")));
    try {
      Path program =
          Path.of(BuildIdentity.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      if (Files.isDirectory(program)) {
        addFolder(program, words);
      } else {
        addJar(program, words);
        addJar(program.resolveSibling(LIBRARIES), words);
      }
    } catch (IOException | URISyntaxException e) {
      throw new IllegalStateException("the program cannot read itself", e);
    }
    return Digests.of(words);
  }

  /** The table of a jar says of each entry how long it is and what its bytes sum up to. */
  private static void addJar(Path jar, List<String> words) throws IOException {
    if (!Files.exists(jar)) {
      return;
    }
    try (JarFile file = new JarFile(jar.toFile())) {
      for (Enumeration<? extends ZipEntry> all = file.entries(); all.hasMoreElements(); ) {
        ZipEntry entry = all.nextElement();
        words.add(entry.getName() + " " + entry.getSize() + " " + entry.getCrc());
      }
    }
  }

  private static void addFolder(Path folder, List<String> words) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        words.add(folder.relativize(file) + " " + Digests.of(Files.readAllBytes(file)));
      }
    }
  }
}
