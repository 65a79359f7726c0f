package clampwise.cli;

import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.rulebook.OwnRules;

/** Reviews jobs by the rules that ship with the program, and by a company's own. */
final class ReviewDesk implements Desk {

  private final Reviewer reviewer;
  private final OwnRules own;
  private final JobSource<Review> jobs;

  ReviewDesk() {
    this(new Reviewer(), OwnRules.NONE);
  }

  private ReviewDesk(Reviewer reviewer, OwnRules own) {
    this.reviewer = reviewer;
    this.own = own;
    this.jobs = new JobSource<>(reviewer::review, reviewer::review, Desk::unreadable);
  }

  @Override
  public Review review(String name, Console console) {
    return jobs.take(name, console);
  }

  @Override
  public Desk with(OwnRules added) {
    return new ReviewDesk(reviewer.with(added), added);
  }

  @Override
  public OwnRules own() {
    return own;
  }
}
