package clampwise.calc.wind;

/** Edition of ASCE 7. */
public enum Edition {
  ASCE_7_16("asce-7-16", "7-16"),
  ASCE_7_22("asce-7-22", "7-22");

  private final String document;
  private final String number;

  Edition(String document, String number) {
    this.document = document;
    this.number = number;
  }

  /** Key of the edition in the references. */
  public String document() {
    return document;
  }

  /** The edition's number, such as {@code 7-22}. */
  public String number() {
    return number;
  }

  /** Whether the velocity pressure already holds the directionality factor. */
  public boolean hasDirectionalityInVelocity() {
    return this == ASCE_7_16;
  }
}
