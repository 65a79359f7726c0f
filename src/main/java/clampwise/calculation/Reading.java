package clampwise.calculation;

import clampwise.calc.trail.Measure;
import java.util.List;
import java.util.Optional;

/**
 * What became of the words {@code key=value} for a calculation.
 *
 * @param given the inputs, if there is nothing to say against any of them
 * @param measure the units that most of them were written in
 * @param texts what was written, or stands when left out, by input in the order asked for
 * @param problems what is wrong with them, all at once
 */
public record Reading(
    Optional<Given> given, Measure measure, List<Text> texts, List<String> problems) {

  /**
   * An input as it stands.
   *
   * @param input the input
   * @param text what was written or stands for it
   * @param written whether it was written
   */
  public record Text(Input input, String text, boolean written) {}
}
