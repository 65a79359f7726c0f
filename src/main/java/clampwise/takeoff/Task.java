package clampwise.takeoff;

/**
 * Work of a crew that is counted by pieces.
 *
 * @param phase part of the work it belongs to
 * @param what what is counted
 * @param number how many, or how many metres
 * @param each time for one [s]
 */
public record Task(CrewPhase phase, String what, double number, double each) {

  /** Time for all [s]. */
  public double seconds() {
    return number * each;
  }
}
