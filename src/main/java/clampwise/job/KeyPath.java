package clampwise.job;

import java.util.List;
import java.util.Set;

/** Names the key that is missing, as one writes it: {@code (site: wind-speed)}. */
final class KeyPath {

  /** Keys under which names are free. */
  static final Set<String> OF_NAMES =
      Set.of(
          "panels",
          "planes",
          "modules",
          "fields",
          "obstructions",
          "seam-clamps",
          "rib-brackets",
          "mid-clamps",
          "end-clamps",
          "jumpers",
          "lugs",
          "wire-clips",
          "strings",
          "circuits",
          "sheets",
          "tools",
          "squareness",
          "escape-openings");

  private KeyPath() {}

  /** The key in brackets behind a sentence, from the thing on that the sentence names. */
  static String behind(String sentence, List<String> path) {
    String key = path.get(path.size() - 1);
    if (sentence.contains("(" + key + ")") || sentence.contains(": " + key + ")")) {
      return sentence;
    }
    return sentence
        + " ("
        + String.join(": ", path.subList(start(sentence, path), path.size()))
        + ")";
  }

  private static int start(String sentence, List<String> path) {
    int start = 0;
    for (int i = 1; i < path.size() - 1; i++) {
      if (OF_NAMES.contains(path.get(i - 1)) && sentence.contains(" " + path.get(i))) {
        start = i + 1;
        i++; // what stands under a name is a key, whatever the name
      }
    }
    return start;
  }
}
