package clampwise.cli;

import clampwise.batch.BuildIdentity;
import clampwise.batch.Crew;
import clampwise.batch.JobResult;
import clampwise.batch.Part;
import clampwise.batch.ResultCache;
import clampwise.report.Paint;
import clampwise.repository.JobList;
import clampwise.repository.ListedJob;
import clampwise.review.Review;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Reviews many jobs at once; one that fails does not stop the others. */
final class ManyJobs {

  private final Console console;
  private final Desk desk;
  private final ReviewOptions options;
  private final ManyOptions many;
  private final Faults faults;

  ManyJobs(Console console, Desk desk, ReviewOptions options) {
    this.console = console;
    this.desk = desk;
    this.options = options;
    this.many = options.many().orElse(ManyOptions.NONE);
    this.faults = new Faults(console);
  }

  /**
   * Reviews all jobs that the words name and answers the exit code.
   *
   * @param own what the own rules of a company answer already
   */
  int run(int own) {
    List<ListedJob> jobs = jobs();
    return many.to().map(file -> carry(jobs, file)).orElseGet(() -> say(jobs, own));
  }

  private List<ListedJob> jobs() {
    List<ListedJob> all = JobList.of(options.jobs());
    options.reports().checkFree(names(all));
    if (many.changed().isEmpty()) {
      return all;
    }
    String revision = many.changed().get();
    List<ListedJob> affected = ChangedJobs.of(all, revision, crew(), desk);
    if (!options.quiet()) {
      String those = affected.isEmpty() ? "none" : String.valueOf(affected.size());
      String verb = affected.size() == 1 ? " is" : " are";
      console.complain(those + " of " + jobs(all.size()) + verb + " affected since " + revision);
    }
    return affected;
  }

  private static List<String> names(List<ListedJob> jobs) {
    return jobs.stream().map(ListedJob::name).toList();
  }

  private static String jobs(int count) {
    return count + (count == 1 ? " job" : " jobs");
  }

  /** Prints and writes what the jobs of this machine's share say. */
  private int say(List<ListedJob> jobs, int own) {
    Paint paint = ReviewCommand.paint(options.colouring(), console);
    ResultSink sink = new ResultSink(options, new ReviewPrinter(console, options, paint), own);
    review(jobs, sink::take);
    return sink.finish(desk);
  }

  /** Writes the results of this machine's share to a file, for them to be joined. */
  private int carry(List<ListedJob> jobs, String file) {
    List<JobResult> results = new ArrayList<>();
    review(jobs, results::add);
    Part part =
        new Part(
            BuildIdentity.read(),
            desk.own().digest(),
            desk.asked(),
            options.threshold(),
            Part.digest(names(jobs)),
            jobs.size(),
            many.share(),
            results);
    WholeFile.write(file, out -> out.write(part.bytes()));
    for (JobResult result : results) {
      if (result.review().isEmpty()) {
        console.complain(result.fault());
      }
    }
    console.print(results.size() + " of " + jobs(jobs.size()) + " reviewed into " + file + "\n");
    return ExitCode.CLEAR;
  }

  private void review(List<ListedJob> jobs, Consumer<JobResult> inOrder) {
    int count = many.share().of(jobs.size());
    ResultCache cache =
        new ResultCache(count > 1 && many.cached() ? cacheFolder() : Optional.empty());
    Desk reviewing = options.needsFacts() ? desk : desk.light(cache);
    ProgressLine progress = new ProgressLine(console, !options.quiet(), count);
    crew()
        .run(
            count,
            own -> review(jobs.get(many.share().place(own)), reviewing, progress),
            (JobResult job) -> {
              progress.clear();
              inOrder.accept(job);
            });
    progress.clear();
    cache.tidy();
    cache.note().ifPresent(console::complain);
  }

  private Optional<Path> cacheFolder() {
    Path folder = Terminals.cacheFolder(console.environment()).resolve("results");
    return folder.isAbsolute() ? Optional.of(folder) : Optional.empty();
  }

  private Crew crew() {
    return many.cores().map(Crew::new).orElseGet(Crew::ofAllCores);
  }

  @SuppressWarnings("CatchingUnchecked") // a fault in one job must not lose the others
  private JobResult review(ListedJob job, Desk reviewing, ProgressLine progress) {
    try {
      Review review =
          job.problem()
              .map(Desk::unreadable)
              .orElseGet(() -> reviewing.review(job.name(), console));
      return JobResult.of(job.name(), review);
    } catch (RuntimeException | StackOverflowError e) {
      faults.trace(e);
      return JobResult.fault(job.name(), Faults.text(job.name(), e));
    } finally {
      progress.step();
    }
  }
}
