package clampwise.proof;

import java.util.LinkedHashMap;
import java.util.Map;

/** Calls fields otherwise. */
final class OtherNames implements Change {
  private static final Map<String, String> NAMES =
      Map.of("A", "Lower", "B", "Middle", "C", "Other", "E", "Past");

  @Override
  public Draft of(Draft draft) {
    Draft renamed = Paths.texts(draft, OtherNames::text);
    Map<String, Object> fields = new LinkedHashMap<>();
    Draft.mapping(renamed.get("fields").orElseThrow())
        .forEach((name, field) -> fields.put(NAMES.getOrDefault(name, name), field));
    renamed.set("fields", fields);
    return renamed;
  }

  private static String text(String path, String text) {
    boolean named =
        path.startsWith("bonding.")
            || path.matches("electrical\\.strings\\.[^.]+\\.field")
            || path.matches("fields\\.[^.]+\\.like");
    int dot = text.indexOf('.');
    String name = dot < 0 ? text : text.substring(0, dot);
    return named && NAMES.containsKey(name)
        ? NAMES.get(name) + text.substring(name.length())
        : text;
  }

  @Override
  public String renamed(Draft draft, String subject) {
    String renamed = subject;
    for (Map.Entry<String, String> name : NAMES.entrySet()) {
      String before =
          "(?<=\\bfields\\.|\\bfield |\\bon |\\bfrom |\\battachment |/ )" + name.getKey();
      renamed = renamed.replaceAll(before + "(?=\\.R\\d| |$|,)", name.getValue());
    }
    return renamed;
  }
}
