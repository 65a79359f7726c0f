package clampwise.takeoff;

/** Kinds of things that a take-off counts, in the order in which they are listed. */
public enum PartKind {
  MODULE("module"),
  SEAM_CLAMP("seam clamp"),
  RIB_BRACKET("rib bracket"),
  ATTACHMENT("attachment"),
  MID_CLAMP("mid clamp"),
  END_CLAMP("end clamp"),
  JUMPER("bonding jumper"),
  LUG("grounding lug"),
  WIRE_CLIP("wire clip");

  private final String word;

  PartKind(String word) {
    this.word = word;
  }

  /** What one is called. */
  public String word() {
    return word;
  }

  /** Whether it holds the array to the roof. */
  public boolean isAttachment() {
    return this == SEAM_CLAMP || this == RIB_BRACKET || this == ATTACHMENT;
  }
}
