package clampwise.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** Rewrites the texts of a draft, each with its path. */
final class Paths {

  private Paths() {}

  static Draft texts(Draft draft, BiFunction<String, String, String> rewritten) {
    Draft copy = draft.copy();
    Map<String, Object> root = copy.root();
    root.replaceAll((key, value) -> rewrite(key, value, rewritten));
    return copy;
  }

  private static Object rewrite(
      String path, Object value, BiFunction<String, String, String> rewritten) {
    if (value instanceof Map) {
      Map<String, Object> map = new LinkedHashMap<>();
      Draft.mapping(value)
          .forEach((key, each) -> map.put(key, rewrite(path + "." + key, each, rewritten)));
      return map;
    }
    if (value instanceof List) {
      List<Object> list = new ArrayList<>();
      int number = 0;
      for (Object each : Draft.list(value)) {
        list.add(rewrite(path + "." + number++, each, rewritten));
      }
      return list;
    }
    return rewritten.apply(path, (String) value);
  }
}
