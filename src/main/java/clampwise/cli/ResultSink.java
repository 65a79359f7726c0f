package clampwise.cli;

import clampwise.batch.JobResult;
import clampwise.review.Review;
import java.util.ArrayList;
import java.util.List;

/** Where the results of many jobs go, one by one: to the printer, to files, to the exit code. */
final class ResultSink {

  private final ReviewOptions options;
  private final ReviewPrinter printer;
  private final List<Review> kept = new ArrayList<>();
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
    printer.print(job);
  }

  /** Writes what stands below or needs all results, and answers the exit code. */
  int finish(Desk desk) {
    try {
      if (options.writesFiles()) {
        options.files(desk).write(kept, worst);
      }
    } finally {
      printer.finish();
    }
    return worst;
  }
}
