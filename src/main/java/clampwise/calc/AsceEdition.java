package clampwise.calc;

import clampwise.calc.trail.Source;

/** An edition of ASCE 7. */
public enum AsceEdition {
  ASCE_7_16("asce-7-16", "7-16"),
  ASCE_7_22("asce-7-22", "7-22");

  private final String document;
  private final String label;

  AsceEdition(String document, String label) {
    this.document = document;
    this.label = label;
  }

  /** Key of the edition among the references. */
  public String document() {
    return document;
  }

  /** Year of the edition as people write it, such as {@code 7-16}. */
  public String label() {
    return label;
  }

  /** Whether the velocity pressure already holds the directionality factor. */
  public boolean hasDirectionalityInVelocity() {
    return this == ASCE_7_16;
  }

  /** A source that holds for both editions, named for this one. */
  public Source source(Source shared) {
    return new Source(document, label, shared.clause(), shared.obtained(), shared.validity());
  }
}
