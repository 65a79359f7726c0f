package clampwise.rulebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The documents of the shared references, by key. */
record Bibliography(Map<String, String> titles) {
  private static final Pattern ENTRY =
      Pattern.compile("@\\w+\\{([^,\\s]+),(.*?)\\n}", Pattern.DOTALL);
  private static final Pattern TITLE = Pattern.compile("\\btitle\\s*=\\s*\\{(.*?)}[,\\s]");

  static Bibliography read() {
    try {
      Matcher entry = ENTRY.matcher(Files.readString(Path.of("shared/references.bib")));
      Map<String, String> titles = new TreeMap<>();
      while (entry.find()) {
        Matcher title = TITLE.matcher(entry.group(2));
        titles.put(entry.group(1), title.find() ? title.group(1) : "");
      }
      return new Bibliography(titles);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  boolean has(String key) {
    return titles.containsKey(key);
  }
}
