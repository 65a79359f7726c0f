package clampwise.cli;

import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.source.Problem;
import java.util.List;

/** Reviews jobs by the rules that ship with the program. */
final class ReviewDesk implements Desk {

  private final Reviewer reviewer = new Reviewer();
  private final JobSource<Review> jobs =
      new JobSource<>(reviewer::review, reviewer::review, ReviewDesk::unreadable);

  @Override
  public Review review(String name, Console console) {
    return jobs.take(name, console);
  }

  private static Review unreadable(Problem problem) {
    return new Review(
        problem.at().file(), "", 0, List.of(problem), List.of(), List.of(), List.of());
  }
}
