package clampwise.facts.bonding;

import clampwise.facts.layout.PlacedModule;

/** How many frames lose ground when one is taken out. */
final class Cuts {

  private final Net net;
  private final Walk walk;
  private final int[] cutOff;

  Cuts(Net net) {
    this.net = net;
    this.walk = net.walk();
    this.cutOff = walk.cutOff();
  }

  boolean isGrounded(PlacedModule frame) {
    return walk.isGrounded(net.number(frame));
  }

  /** Other frames that lose ground without this one. */
  int by(PlacedModule frame) {
    return cutOff[net.number(frame)];
  }

  /** Whether any frame may be taken out. */
  boolean isNone() {
    for (int cut : cutOff) {
      if (cut > 0) {
        return false;
      }
    }
    return true;
  }
}
