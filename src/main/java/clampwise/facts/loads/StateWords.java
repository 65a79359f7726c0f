package clampwise.facts.loads;

import clampwise.calc.statics.TestedLoad.Meaning;

/**
 * What loads and strengths of a limit state are called.
 *
 * @param loads the loads
 * @param strength what they may be held against
 * @param remedy what to do where the strength is another one
 */
record StateWords(String loads, String strength, String remedy) {

  private static final String ALLOWABLE = "an allowable load (ASD)";

  private static final String DESIGN = "a design strength (LRFD)";
  private static final String OTHER_METHOD = ", or change the method of the loads";

  static final StateWords ASD =
      new StateWords("service loads (ASD)", ALLOWABLE, "use " + ALLOWABLE + OTHER_METHOD);
  static final StateWords LRFD =
      new StateWords("factored loads (LRFD)", DESIGN, "use " + DESIGN + OTHER_METHOD);
  static final StateWords EUROCODE =
      new StateWords(
          "design values of EN 1990",
          "a design resistance",
          "write the part under parts: with its design resistance (loads-are: resistance), or with an"
              + " ultimate load and the resistance-factor that makes one of it");

  /** What the stated load of a test is called where these words hold. */
  String of(Meaning meaning) {
    return switch (meaning) {
      case ALLOWABLE -> ALLOWABLE;
      case DESIGN -> equals(EUROCODE) ? strength : LRFD.strength;
      case ULTIMATE -> "an ultimate load";
    };
  }
}
