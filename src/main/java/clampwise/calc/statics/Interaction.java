package clampwise.calc.statics;

/** How forces across the roof and along the seam use up one attachment together. */
public enum Interaction {
  /** Each direction on its own; the worse counts. */
  NONE,
  /** The shares add up. */
  LINEAR,
  /** The squares of the shares add up; the root grows with the load. */
  QUADRATIC;

  /** The share used by both together. */
  public double together(double normal, double slope) {
    return switch (this) {
      case NONE -> Math.max(normal, slope);
      case LINEAR -> normal + slope;
      case QUADRATIC -> Math.hypot(normal, slope);
    };
  }

  String formula() {
    return switch (this) {
      case NONE -> "max(U_n,U_s)";
      case LINEAR -> "U_n+U_s";
      case QUADRATIC -> "sqrt(U_n^2+U_s^2)";
    };
  }
}
