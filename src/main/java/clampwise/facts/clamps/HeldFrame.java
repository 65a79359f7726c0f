package clampwise.facts.clamps;

import clampwise.facts.layout.PlacedModule;

/** A module with a clamp that grips its frame. */
record HeldFrame(PlacedModule module, ClampUse use) {

  /** The combination that fits or does not fit, wherever it occurs. */
  String combination() {
    return use.word() + " on " + module.typeName();
  }
}
