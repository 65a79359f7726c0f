package clampwise.packaging;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Rewrites a jar so that a start has less to read and to link. */
public final class PlainJar {

  private static final String CLASS = ".class";

  private PlainJar() {}

  /**
   * Rewrites a jar in place, with what is not the program's own in a second jar beside it: opening
   * a jar of ten thousand entries takes a start longer than reading the job.
   *
   * @param arguments the jar that holds everything, which names the second in its manifest, and the
   *     second jar
   */
  public static void main(String[] arguments) throws IOException {
    Path jar = Path.of(arguments[0]);
    Path next = jar.resolveSibling(jar.getFileName() + ".next");
    Map<String, byte[]> own = plain(made(entries(jar)));
    Map<String, byte[]> libraries = new LinkedHashMap<>(own);
    libraries.keySet().removeIf(PlainJar::isOwn);
    own.keySet().removeAll(libraries.keySet());
    write(libraries, Path.of(arguments[1]));
    write(own, next);
    Files.move(next, jar, StandardCopyOption.REPLACE_EXISTING);
  }

  private static boolean isOwn(String entry) {
    return entry.startsWith("clampwise/") || entry.equals("META-INF/MANIFEST.MF");
  }

  private static Map<String, byte[]> entries(Path jar) throws IOException {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      for (Enumeration<? extends ZipEntry> each = zip.entries(); each.hasMoreElements(); ) {
        ZipEntry entry = each.nextElement();
        entries.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
      }
    }
    return entries;
  }

  /** The program's own data as code, which the next step makes plain too. */
  private static Map<String, byte[]> made(Map<String, byte[]> entries) {
    Map<String, byte[]> result = new LinkedHashMap<>(entries);
    entries.forEach(
        (name, bytes) -> {
          if (isOwn(name) && name.endsWith(CLASS)) {
            MadeMethods.replace(bytes).forEach((made, code) -> result.put(made + CLASS, code));
          }
        });
    return result;
  }

  private static Map<String, byte[]> plain(Map<String, byte[]> entries) {
    Map<String, byte[]> classes = new TreeMap<>();
    entries.forEach(
        (name, bytes) -> {
          if (name.endsWith(CLASS) && !name.startsWith("META-INF/")) {
            classes.put(name.substring(0, name.length() - CLASS.length()), bytes);
          }
        });
    classes.putAll(Comparisons.of(classes));
    classes.putAll(YamlSettings.of(classes));
    classes.putAll(LatePatterns.of(classes));
    classes.putAll(PlainClasses.of(classes));
    classes.putAll(Replacements.of(classes));
    Map<String, byte[]> result = new LinkedHashMap<>(entries);
    classes.forEach((name, bytes) -> result.put(name + CLASS, bytes));
    return result;
  }

  private static void write(Map<String, byte[]> entries, Path jar) throws IOException {
    try (OutputStream out = Files.newOutputStream(jar);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        ZipEntry written = new ZipEntry(entry.getKey());
        written.setTime(0);
        zip.putNextEntry(written);
        zip.write(entry.getValue());
        zip.closeEntry();
      }
    }
  }
}
