package clampwise.facts.clamps;

import clampwise.job.ModuleClamp;
import clampwise.job.Text;

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
    MID("mid clamp"),
    END("end clamp");

    private final String word;

    Role(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  String word() {
    return role.word() + " " + name.value();
  }
}
