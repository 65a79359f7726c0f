package clampwise.rulebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the source of a fact says of it.
 *
 * @param says its first words
 * @param components what each component means, by name
 */
record FactSource(String says, Map<String, String> components) {
  private static final Pattern DOC =
      Pattern.compile("(?s)/\\*\\*(.*?)\\*/\\s*(?:@\\w+\\s+)*public record ");
  private static final Pattern TAG = Pattern.compile("\\{@(\\w+)\\s+([^}]*)}");
  private static final Path SOURCES = Path.of("src/main/java");

  /** Components that are the same in every fact, so that not every source says what they are. */
  private static final Map<String, String> USUAL =
      Map.ofEntries(
          Map.entry("field", "name of the field"),
          Map.entry("plane", "name of the plane"),
          Map.entry("part", "name of the part"),
          Map.entry("covering", "name of the roof covering"),
          Map.entry("attachment", "name of the attachment"),
          Map.entry("fitting", "what would fit instead"),
          Map.entry("line", "number of the line of attachments"),
          Map.entry("seam", "number of the seam or rib"),
          Map.entry("metal", "metal of the sheet"),
          Map.entry("substrate", "what the sheet rests on"),
          Map.entry("tested", "whether it was tested so"),
          Map.entry("madeForIt", "whether it is made for it"),
          Map.entry("spacingM", "the widest spacing [m]"),
          Map.entry("sizeM", "the size [m]"),
          Map.entry("minM", "least that the part is made for [m]"),
          Map.entry("maxM", "most that the part is made for [m]"),
          Map.entry("attachments", "number of attachments"),
          Map.entry("modules", "number of modules"));

  /** What a component means. */
  Optional<String> meaning(String component) {
    return Optional.ofNullable(components.getOrDefault(component, USUAL.get(component)));
  }

  static FactSource of(Class<?> fact) {
    Matcher doc = DOC.matcher(text(fact));
    if (!doc.find()) {
      throw new AssertionError("no Javadoc on " + fact);
    }
    String words = doc.group(1);
    words = words.substring(words.lastIndexOf("/**") < 0 ? 0 : words.lastIndexOf("/**") + 3);
    String[] parts = words.replaceAll("(?m)^\\s*\\* ?", "").strip().split("(?m)^\\s*@param ", -1);
    Map<String, String> components = new LinkedHashMap<>();
    for (int i = 1; i < parts.length; i++) {
      String[] part = parts[i].strip().split("\\s+", 2);
      components.put(part[0], plain(part[1]));
    }
    return new FactSource(plain(parts[0]), components);
  }

  private static String text(Class<?> fact) {
    try {
      return Files.readString(SOURCES.resolve(fact.getName().replace('.', '/') + ".java"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** In one line, without the marks of Javadoc. */
  private static String plain(String text) {
    return TAG.matcher(text.replaceAll("</?p>", " "))
        .replaceAll(tag -> Matcher.quoteReplacement(tagged(tag.group(1), tag.group(2))))
        .replaceAll("\\s+", " ")
        .replace("|", "\\|")
        .strip();
  }

  private static String tagged(String tag, String text) {
    return tag.equals("code") ? "`" + text + "`" : text.replaceFirst("^\\S*[#.]", "");
  }
}
