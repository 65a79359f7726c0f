package clampwise.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A job written down.
 *
 * @param text as a job file
 * @param lines line of every path in it
 * @param starts line below its key, for mappings and lists
 */
record Written(String text, Map<String, Integer> lines, Map<String, Integer> starts) {

  static Written of(Map<String, Object> root) {
    Writer writer = new Writer();
    writer.mapping(root, "", "");
    return new Written(writer.text.toString(), writer.lines, writer.starts);
  }

  /** Whether a path stands on a line: its key, or what is written below the key. */
  boolean isAt(String path, int line) {
    if (!lines.containsKey(path)) {
      throw new IllegalArgumentException(path + "\n" + text);
    }
    return lines.get(path) == line || starts.getOrDefault(path, 0) == line;
  }

  /** One key a line; lists of texts on one line. */
  private static final class Writer {
    private final StringBuilder text = new StringBuilder();
    private final Map<String, Integer> lines = new HashMap<>();
    private final Map<String, Integer> starts = new HashMap<>();
    private int line = 1;

    private void mapping(Map<String, Object> map, String path, String indent) {
      map.forEach(
          (key, value) -> {
            text.append(indent);
            entry(key, value, path, indent);
          });
    }

    private void entry(String key, Object value, String path, String indent) {
      String own = path.isEmpty() ? key : path + "." + key;
      lines.put(own, line);
      text.append(quoted(key)).append(':');
      if (value instanceof Map && !Draft.mapping(value).isEmpty()) {
        end();
        starts.put(own, line);
        mapping(Draft.mapping(value), own, indent + "  ");
      } else if (value instanceof List && isLong(Draft.list(value))) {
        end();
        starts.put(own, line);
        items(Draft.list(value), own, indent + "  ");
      } else {
        text.append(' ').append(flow(value, own));
        end();
      }
    }

    private static boolean isLong(List<Object> items) {
      return !items.isEmpty() && items.get(0) instanceof Map;
    }

    private void items(List<Object> items, String path, String indent) {
      for (int i = 0; i < items.size(); i++) {
        String own = path + "." + i;
        lines.put(own, line);
        String dash = indent + "- ";
        for (Map.Entry<String, Object> each : Draft.mapping(items.get(i)).entrySet()) {
          text.append(dash);
          entry(each.getKey(), each.getValue(), own, indent + "  ");
          dash = indent + "  ";
        }
      }
    }

    private String flow(Object value, String path) {
      lines.put(path, line);
      if (value instanceof List) {
        StringBuilder all = new StringBuilder("[");
        List<Object> items = Draft.list(value);
        for (int i = 0; i < items.size(); i++) {
          all.append(i == 0 ? "" : ", ").append(flow(items.get(i), path + "." + i));
        }
        return all.append(']').toString();
      }
      return value instanceof Map ? "{}" : quoted((String) value);
    }

    private static String quoted(String word) {
      boolean plain = word.matches("[\\p{L}\\d+./~-][^#\\[\\]{},:\"']*(:\\d[\\d.]*)?");
      return plain ? word : '"' + word.replace("\"", "\\\"") + '"';
    }

    private void end() {
      text.append('\n');
      line++;
    }
  }
}
