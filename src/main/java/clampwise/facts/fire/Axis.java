package clampwise.facts.fire;

import clampwise.facts.layout.PlacedModule;

/** A direction on a plane. */
enum Axis {
  ALONG("along the eave"),
  UP("up the slope");

  private final String words;

  Axis(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  double startM(PlacedModule module) {
    return this == ALONG ? module.leftM() : module.bottomM();
  }

  double endM(PlacedModule module) {
    return this == ALONG ? module.rightM() : module.topM();
  }
}
