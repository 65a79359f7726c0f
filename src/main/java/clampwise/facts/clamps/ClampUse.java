package clampwise.facts.clamps;

import clampwise.job.ModuleClamp;
import clampwise.job.Text;
import clampwise.job.Unreadable;

/**
 * A mid or end clamp as it is used somewhere.
 *
 * @param name its name where it was chosen
 * @param role what it is made for
 * @param clamp the part
 */
record ClampUse(Text name, Role role, ModuleClamp clamp) {

  /** What a clamp is made for. */
  enum Role {
    MID("mid clamp", "mid-clamps"),
    END("end clamp", "end-clamps");

    private final String word;
    private final String shelf;

    Role(String word, String shelf) {
      this.word = word;
      this.shelf = shelf;
    }

    String word() {
      return word;
    }
  }

  String word() {
    return role.word() + " " + name.value();
  }

  /** Says why something about the clamp is not known. */
  String missing(Unreadable unreadable, String what, String key) {
    return unreadable.missing(what, "parts", role.shelf, name.value(), key);
  }
}
