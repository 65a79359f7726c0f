package clampwise.cli;

import clampwise.batch.BuildIdentity;
import clampwise.batch.CachedReviewer;
import clampwise.batch.ResultCache;
import clampwise.gate.Gate;
import clampwise.policy.Policy;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.rulebook.OwnRules;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Reviews jobs by the rules that ship with the program, and by a company's own, and tells what is
 * new in them.
 */
final class ReviewDesk implements Desk {

  private final DeskOptions options;
  private final Reviewer reviewer;
  private final Function<Path, Review> files;
  private final OwnRules own;
  private final Gate gate;

  ReviewDesk(DeskOptions options) {
    this(options, new Reviewer(options.policy()), OwnRules.NONE);
  }

  private ReviewDesk(DeskOptions options, Reviewer reviewer, OwnRules own) {
    this(options, reviewer, reviewer::review, own);
  }

  private ReviewDesk(
      DeskOptions options, Reviewer reviewer, Function<Path, Review> files, OwnRules own) {
    this.options = options;
    this.reviewer = reviewer;
    this.files = files;
    this.own = own;
    this.gate =
        new Gate(
            options.today().orElseGet(LocalDate::now),
            reviewer::ruleIds,
            job -> reviewer.policy(job).weights());
  }

  @Override
  public Review review(String name, Console console) {
    return take(name, console, gate::pass);
  }

  @Override
  public Review withDebts(String name, Console console) {
    return take(name, console, gate::passDeviations);
  }

  private Review take(String name, Console console, BiFunction<Review, Path, Review> gated) {
    JobSource.FromText<Review> input =
        (shown, text, beside) ->
            options.inputFile().isPresent()
                ? input(options.inputFile().get(), text, gated)
                : reviewer.review(shown, text, beside);
    return new JobSource<>(file -> gated.apply(files.apply(file), file), input, Desk::unreadable)
        .take(name, console);
  }

  /** Standard input in place of what a file holds. */
  private Review input(Path file, byte[] text, BiFunction<Review, Path, Review> gated) {
    return gated.apply(reviewer.review(file, text), file);
  }

  @Override
  public Policy policy(String job) {
    return reviewer.policy(Path.of(job));
  }

  @Override
  public Desk with(OwnRules added) {
    return new ReviewDesk(options, reviewer.with(added), added);
  }

  @Override
  public Desk light(ResultCache cache) {
    String version = BuildIdentity.read() + " " + own.digest();
    CachedReviewer cached = new CachedReviewer(reviewer, cache, version);
    return new ReviewDesk(options, reviewer, cached::review, own);
  }

  @Override
  public String asked() {
    String policy = options.policy().map(file -> reviewer.policy(file).digest()).orElse("");
    return policy + options.today().map(LocalDate::toString).orElse("");
  }

  @Override
  public OwnRules own() {
    return own;
  }
}
