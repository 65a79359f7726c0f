package clampwise.calc.wind;

/**
 * One condition of the method for panels parallel to the roof, with its answer.
 *
 * @param name what is asked, such as {@code height}
 * @param answer whether it is met
 * @param sentence the answer in words, with both numbers
 */
public record PanelCondition(String name, Answer answer, String sentence) {

  /** Whether a condition is met. */
  public enum Answer {
    MET,
    NOT_MET,
    NOT_GIVEN
  }

  static PanelCondition of(String name, boolean met, String sentence) {
    return new PanelCondition(name, met ? Answer.MET : Answer.NOT_MET, sentence);
  }

  static PanelCondition notGiven(String name, String what) {
    return new PanelCondition(name, Answer.NOT_GIVEN, what + " is not given");
  }
}
