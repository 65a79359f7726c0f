package clampwise.batch;

import java.util.Optional;

/**
 * How far a run over many jobs got.
 *
 * @param done jobs that are done
 * @param total all jobs
 * @param seconds time since the start [s]
 */
public record Progress(int done, int total, double seconds) {

  private static final double TOO_EARLY_S = 1;

  private static final int MINUTE = 60;
  private static final int COARSE = 5;

  /** The time left [s], if the jobs so far say anything about it. */
  public Optional<Double> secondsLeft() {
    return done == 0 || seconds < TOO_EARLY_S
        ? Optional.empty()
        : Optional.of(seconds / done * (total - done));
  }

  /** In words, such as {@code 120 of 400 jobs, about 25 s left}. */
  public String text() {
    String counts = done + " of " + total + (total == 1 ? " job" : " jobs");
    return counts + secondsLeft().map(left -> ", about " + spoken(left) + " left").orElse("");
  }

  private static String spoken(double seconds) {
    long whole = (long) Math.ceil(seconds);
    if (whole > 2 * MINUTE) {
      return (whole + MINUTE / 2) / MINUTE + " min";
    }
    long coarse = whole > 2 * COARSE ? (whole + COARSE - 1) / COARSE * COARSE : whole;
    return coarse + " s";
  }
}
