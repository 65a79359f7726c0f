package clampwise.batch;

import clampwise.review.Review;
import java.util.Optional;

/**
 * What became of one job of many.
 *
 * @param name how the job was named
 * @param review its review, if there is one
 * @param fault what is said of the fault of the program that there is in place of a review; empty
 *     if there is none
 */
public record JobResult(String name, Optional<Review> review, String fault) {

  /** A job that was reviewed. */
  public static JobResult of(String name, Review review) {
    return new JobResult(name, Optional.of(review), "");
  }

  /** A job whose review broke off. */
  public static JobResult fault(String name, String fault) {
    return new JobResult(name, Optional.empty(), fault);
  }
}
