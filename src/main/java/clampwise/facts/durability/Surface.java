package clampwise.facts.durability;

import clampwise.job.Choice;
import clampwise.job.SurfaceMetal;

/**
 * A metal as it lies open on a part or sheet.
 *
 * @param metal the metal
 * @param name what it is of, such as {@code the sheet of barn roof}
 */
record Surface(SurfaceMetal metal, String name) {

  /** Name and metal, for messages. */
  String words() {
    return name + " (" + words(metal) + ")";
  }

  static String words(SurfaceMetal metal) {
    return metal == SurfaceMetal.AL_ZN_STEEL
        ? "Al-Zn coated steel"
        : Choice.word(metal).replace('-', ' ');
  }
}
