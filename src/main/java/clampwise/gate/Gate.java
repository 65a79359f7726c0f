package clampwise.gate;

import clampwise.finding.Weights;
import clampwise.review.Review;
import clampwise.source.Problem;
import clampwise.source.SourceText;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Tells what is new in a review from what somebody has answered for: deviations accepted beside the
 * job, and debts known since clampwise was adopted. Both are shown in every report; neither fails a
 * run as long as it holds. May be shared by several threads.
 */
public final class Gate {

  private final LocalDate today;
  private final Supplier<Collection<String>> rules;
  private final Function<Path, Weights> weights;
  private final Map<Path, DebtRecord> records = new ConcurrentHashMap<>();

  /**
   * A gate on a day.
   *
   * @param rules ids of all rules that are asked
   * @param weights what the house of a job makes of the rules
   */
  public Gate(
      LocalDate today, Supplier<Collection<String>> rules, Function<Path, Weights> weights) {
    this.today = today;
    this.rules = rules;
    this.weights = weights;
  }

  /** The review of a job file with its findings told apart. */
  public Review pass(Review review, Path job) {
    return pass(review, job, record(job));
  }

  /** The same where known debts are findings like any other. */
  public Review passDeviations(Review review, Path job) {
    return pass(review, job, Optional.empty());
  }

  private Review pass(Review review, Path job, Optional<DebtRecord> record) {
    Path file = DeviationFiles.of(job);
    Beside<DeviationFile> beside = Beside.read(file, DeviationFile.class, DeviationFile::check);
    boolean nothing = beside.sources().isEmpty() && beside.problems().isEmpty();
    return nothing && record.isEmpty() ? review : pass(review, job, beside, record);
  }

  private Review pass(
      Review review, Path job, Beside<DeviationFile> beside, Optional<DebtRecord> record) {
    List<Answer> answers = new ArrayList<>();
    beside
        .content()
        .ifPresent(file -> file.accepted().forEach(one -> answers.add(new DeviationAnswer(one))));
    record.ifPresent(known -> answers.addAll(known.of(job)));
    Sorting sorting = new Sorting(review, answers, today, rules);
    sorting.sort();
    List<Problem> problems = new ArrayList<>(review.problems());
    problems.addAll(beside.problems());
    record.ifPresent(known -> problems.addAll(known.file().problems()));
    List<SourceText> sources = new ArrayList<>(review.sources());
    sources.addAll(beside.sources());
    record.ifPresent(known -> sources.addAll(known.file().sources()));
    return review
        .with(problems, sorting.open(weights.apply(job)), sorting.accepted())
        .from(List.copyOf(sources));
  }

  private Optional<DebtRecord> record(Path job) {
    return DebtRecord.find(job).map(path -> records.computeIfAbsent(path, DebtRecord::read));
  }
}
