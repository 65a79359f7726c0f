package clampwise.facts.clamps;

import clampwise.facts.layout.PlacedModule;

/** A module with a clamp that grips its frame. */
record HeldFrame(PlacedModule module, ClampUse use) {

  /** The combination that fits or does not fit, wherever it occurs. */
  String combination() {
    return use.word() + " on " + module.typeName();
  }

  /** Whether both heights are known and the clamp does not grip the frame. */
  boolean isOutOfRange() {
    return use.clamp()
        .frameHeight()
        .flatMap(range -> module.type().frameHeight().map(height -> !range.contains(height.m())))
        .orElse(false);
  }
}
