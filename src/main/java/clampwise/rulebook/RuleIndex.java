package clampwise.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Names of what the build packs beside the classes, and how to read it. */
public final class RuleIndex {
  public static final String FOLDER = "clampwise/rules/";
  public static final String MODELS = FOLDER + "models";
  public static final String PAGES = FOLDER + "pages";
  public static final String FACTS = FOLDER + "facts";
  public static final String BASE = FOLDER + "base/";
  public static final String BASES = FOLDER + "bases";
  public static final String STAMP = FOLDER + "stamp";

  private RuleIndex() {}

  /** The lines of a packed list. */
  public static List<String> lines(String name) {
    return text(name).orElse("").lines().toList();
  }

  /** A packed text. */
  public static Optional<String> text(String name) {
    try (InputStream in = RuleIndex.class.getClassLoader().getResourceAsStream(name)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
