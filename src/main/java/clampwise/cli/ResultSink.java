package clampwise.cli;

import clampwise.batch.JobResult;
import clampwise.review.Review;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the results of many jobs go, one by one: to the printer, to files, to the exit code. */
final class ResultSink {

  private final ReviewOptions options;
  private final ReviewPrinter printer;
  private final List<Review> kept = new ArrayList<>();
  private Optional<UnwritableException> unwritable = Optional.empty();
  private int worst;

  ResultSink(ReviewOptions options, ReviewPrinter printer, int worst) {
    this.options = options;
    this.printer = printer;
    this.worst = worst;
  }

  /** Takes the next result. Reviews are kept only for files that need them all. */
  void take(JobResult job) {
    worst = Math.max(worst, ExitCode.of(job, options));
    if (options.writesFiles()) {
      job.review().ifPresent(kept::add);
    }
    if (unwritable.isEmpty()) {
      print(job);
    }
  }

  /** A reader who has left does not stop a run that also writes files. */
  private void print(JobResult job) {
    try {
      printer.print(job);
    } catch (UnwritableException e) {
      if (!options.writesFiles()) {
        throw e;
      }
      unwritable = Optional.of(e);
    }
  }

  /** Writes what stands below or needs all results, and answers the exit code. */
  int finish(Desk desk) {
    try {
      if (options.writesFiles()) {
        options.files(desk).write(kept, worst);
      }
    } finally {
      finishPrinting();
    }
    return worst;
  }

  private void finishPrinting() {
    if (unwritable.isPresent()) {
      throw unwritable.get();
    }
    printer.finish();
  }
}
