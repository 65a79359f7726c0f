package clampwise.rulebook.build;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/** A fingerprint of everything the compiled rules depend on. */
final class Stamp {
  private final MessageDigest digest;

  private Stamp(MessageDigest digest) {
    this.digest = digest;
  }

  /** Fingerprint of the rules, their pages, and the classes they are compiled against. */
  static String of(RuleFolder rules, Path classes) throws IOException {
    try {
      Stamp stamp = new Stamp(MessageDigest.getInstance("SHA-256"));
      for (RuleText rule : rules.rules()) {
        stamp.add(rule.file(), rule.text().getBytes(StandardCharsets.UTF_8));
      }
      stamp.addAll(rules.pages());
      stamp.addAll(rules.bases());
      stamp.addAll(classFiles(classes.resolve("clampwise/facts")));
      stamp.addAll(classFiles(classes.resolve("clampwise/rulebook")));
      return HexFormat.of().formatHex(stamp.digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Path> classFiles(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".class")).sorted().toList();
    }
  }

  private void addAll(List<Path> files) throws IOException {
    for (Path file : files) {
      add(file.toString(), Files.readAllBytes(file));
    }
  }

  private void add(String name, byte[] content) {
    digest.update(name.getBytes(StandardCharsets.UTF_8));
    digest.update(content);
  }
}
