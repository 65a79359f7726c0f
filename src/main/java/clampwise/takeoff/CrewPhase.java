package clampwise.takeoff;

/** Parts of the work on the roof, in their order. */
public enum CrewPhase {
  SET_UP("set-up"),
  ATTACHMENTS("attachments"),
  RAILS("rails"),
  PLACEMENT("placement"),
  CLAMPS("clamps"),
  BONDING("bonding"),
  WIRING("wiring");

  private final String word;

  CrewPhase(String word) {
    this.word = word;
  }

  /** What it is called. */
  public String word() {
    return word;
  }
}
