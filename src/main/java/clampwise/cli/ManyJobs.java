package clampwise.cli;

import clampwise.batch.Crew;
import clampwise.batch.JobResult;
import clampwise.report.Paint;
import clampwise.repository.JobList;
import clampwise.repository.ListedJob;
import clampwise.review.Review;
import java.util.ArrayList;
import java.util.List;

/** Reviews many jobs at once; one that fails does not stop the others. */
final class ManyJobs {

  private final Console console;
  private final Desk desk;
  private final ReviewOptions options;
  private final ManyOptions many;
  private final ReviewPrinter printer;
  private final Faults faults;
  private final List<Review> kept = new ArrayList<>();
  private int worst = ExitCode.CLEAR;

  ManyJobs(Console console, Desk desk, ReviewOptions options, Paint paint) {
    this.console = console;
    this.desk = desk;
    this.options = options;
    this.many = options.many().orElse(ManyOptions.NONE);
    this.printer = new ReviewPrinter(console, options, paint);
    this.faults = new Faults(console);
  }

  /**
   * Reviews all jobs that the words name and answers the exit code.
   *
   * @param own what the own rules of a company answer already
   */
  int run(int own) {
    worst = own;
    List<ListedJob> jobs = jobs();
    options.reports().checkFree(jobs.stream().map(ListedJob::name).toList());
    ProgressLine progress = new ProgressLine(console, !options.quiet(), jobs.size());
    crew()
        .run(
            jobs.size(),
            number -> review(jobs.get(number), progress),
            job -> {
              progress.clear();
              take(job);
            });
    progress.clear();
    try {
      if (options.writesFiles()) {
        options.files(desk).write(kept, worst);
      }
    } finally {
      printer.finish();
    }
    return worst;
  }

  private List<ListedJob> jobs() {
    List<ListedJob> all = JobList.of(options.jobs());
    if (many.changed().isEmpty()) {
      return all;
    }
    String revision = many.changed().get();
    List<ListedJob> affected = ChangedJobs.of(all, revision, crew());
    if (!options.quiet()) {
      String those = affected.isEmpty() ? "none" : String.valueOf(affected.size());
      String verb = affected.size() == 1 ? " is" : " are";
      console.complain(those + " of " + jobs(all.size()) + verb + " affected since " + revision);
    }
    return affected;
  }

  private static String jobs(int count) {
    return count + (count == 1 ? " job" : " jobs");
  }

  private Crew crew() {
    return many.cores().map(Crew::new).orElseGet(Crew::ofAllCores);
  }

  @SuppressWarnings("CatchingUnchecked") // a fault in one job must not lose the others
  private JobResult review(ListedJob job, ProgressLine progress) {
    try {
      Review review =
          job.problem().map(Desk::unreadable).orElseGet(() -> desk.review(job.name(), console));
      return JobResult.of(job.name(), review);
    } catch (RuntimeException | StackOverflowError e) {
      faults.trace(e);
      return JobResult.fault(job.name(), Faults.text(job.name(), e));
    } finally {
      progress.step();
    }
  }

  private void take(JobResult job) {
    int code = job.review().map(review -> ExitCode.of(review, options)).orElse(ExitCode.FAULT);
    worst = Math.max(worst, code);
    if (options.writesFiles()) {
      job.review().ifPresent(kept::add);
    }
    printer.print(job);
  }
}
