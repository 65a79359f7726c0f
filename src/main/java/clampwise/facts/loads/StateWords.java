package clampwise.facts.loads;

import clampwise.calc.statics.TestedLoad.Meaning;

/**
 * What loads and strengths of a limit state are called.
 *
 * @param loads the loads
 * @param strength what they may be held against
 */
record StateWords(String loads, String strength) {

  private static final String ALLOWABLE = "an allowable load (ASD)";

  static final StateWords ASD = new StateWords("service loads (ASD)", ALLOWABLE);
  static final StateWords LRFD =
      new StateWords("factored loads (LRFD)", "a design strength (LRFD)");
  static final StateWords EUROCODE =
      new StateWords("design values of EN 1990", "a design resistance");

  /** What the stated load of a test is called where these words hold. */
  String of(Meaning meaning) {
    return switch (meaning) {
      case ALLOWABLE -> ALLOWABLE;
      case DESIGN -> equals(EUROCODE) ? strength : LRFD.strength;
      case ULTIMATE -> "an ultimate load";
    };
  }
}
