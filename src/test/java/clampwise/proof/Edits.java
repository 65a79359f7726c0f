package clampwise.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Changes a draft for one defect and remembers which paths it touched. */
final class Edits {
  private static final Map<String, String> USES =
      Map.of(
          "mid-clamps", "fields.$field.mid-clamp",
          "end-clamps", "fields.$field.end-clamp",
          "attachments", "fields.$field.attachment",
          "modules", "fields.$field.module",
          "jumpers", "bonding.jumper",
          "lugs", "bonding.lug",
          "wire-clips", "electrical.cables.clip");

  private final Draft draft;
  private final Words words;
  private final List<String> own = new ArrayList<>();

  Edits(Draft draft, Words words) {
    this.draft = draft;
    this.words = words;
  }

  String last() {
    return own.get(own.size() - 1);
  }

  List<String> changes() {
    return own;
  }

  /** Writes the attachments of every field one by one, as a draughtsman would have. */
  void points(boolean asked) {
    if (!asked) {
      return;
    }
    for (String field : Draft.mapping(draft.get("fields").orElseThrow()).keySet()) {
      for (String key : List.of("attach", "block", "row-gap", "column-gap", "module")) {
        own.add("fields." + field + "." + key);
      }
      Block block = Block.of(draft, field);
      Map<String, Object> attach = new LinkedHashMap<>();
      double zoneMm = block.acrossMm() > block.upMm() ? 215 : 127;
      attach.put("points", block.points(words.number("first"), words.number("pitch"), zoneMm));
      draft.set("fields." + field + ".attach", attach);
    }
  }

  /** Takes another part into use that differs in what is given; false if none is written out. */
  boolean swap(Map<String, Object> parts) {
    boolean done = true;
    for (Map.Entry<String, Object> each : parts.entrySet()) {
      done &= swap(words.fill(each.getKey()), Draft.mapping(words.fill(each.getValue())));
    }
    return done;
  }

  private boolean swap(String role, Map<String, Object> changes) {
    String use = words.fill(USES.get(role));
    String name = draft.text(written(use));
    String kind = role.equals("attachments") ? (String) words.get("role") : role;
    String folder = (role.equals("modules") ? "" : "parts.") + kind + ".";
    if (!draft.has(folder + name)) {
      return false;
    }
    String other = unused(folder, name);
    draft.set(folder + other, Draft.copy(draft.get(folder + name).orElseThrow()));
    changes.forEach((key, value) -> draft.set(folder + other + "." + key, value));
    list(other);
    own.add(written(use));
    change(use, other);
    return true;
  }

  private String unused(String folder, String name) {
    String other = name + "x";
    return draft.has(folder + other) ? unused(folder, other) : other;
  }

  private String written(String use) {
    String field = "fields." + words.get("field") + ".";
    return use.startsWith(field)
        ? Block.from(draft, (String) words.get("field"), use.substring(field.length()))
        : use;
  }

  private void list(String part) {
    for (Object module : Draft.mapping(draft.get("modules").orElseThrow()).values()) {
      if (Draft.mapping(module).containsKey("listed-with")) {
        Draft.list(Draft.mapping(module).get("listed-with")).add(part);
      }
    }
  }

  void set(Map<String, Object> values) {
    values.forEach((path, value) -> change(words.fill(path), words.fill(value)));
  }

  private void change(String path, Object value) {
    own.add(path);
    draft.set(path, value);
  }
}
