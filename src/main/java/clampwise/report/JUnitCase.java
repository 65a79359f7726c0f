package clampwise.report;

/**
 * A test case of JUnit XML.
 *
 * @param rule the rule, which stands for the class
 * @param name the part of the job that it looked at
 * @param type how much it weighs, empty where the case passed or was skipped
 * @param message what is said of it
 * @param text the same at length
 */
record JUnitCase(
    String rule, String name, Outcome outcome, String type, String message, String text) {

  /** How a case ends. */
  enum Outcome {
    PASSED,
    FAILURE,
    ERROR,
    SKIPPED
  }

  static JUnitCase passed(String rule, String name, String text) {
    return new JUnitCase(rule, name, Outcome.PASSED, "", "", text);
  }

  static JUnitCase skipped(String rule, String name, String reason) {
    return new JUnitCase(rule, name, Outcome.SKIPPED, "", reason, "");
  }

  static JUnitCase error(String rule, String name, String message) {
    return new JUnitCase(rule, name, Outcome.ERROR, rule, message, "");
  }
}
