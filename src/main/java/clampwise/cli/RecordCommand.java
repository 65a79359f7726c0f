package clampwise.cli;

import clampwise.gate.DebtBook;
import clampwise.report.ProblemLine;
import clampwise.repository.JobList;
import clampwise.repository.ListedJob;
import clampwise.review.Review;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** {@code clampwise record}: writes down the findings that stand, or takes out solved ones. */
final class RecordCommand {

  private final Console console;
  private final Desk desk;
  private final Faults faults;

  RecordCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
    this.faults = new Faults(console);
  }

  /**
   * Brings the record of the jobs' repository up to date.
   *
   * @param adds whether what is new enters a record that exists
   */
  int run(List<String> words, boolean adds, LocalDate today) {
    List<ListedJob> jobs = JobList.of(words);
    Path place = DebtBook.placeFor(Path.of(jobs.get(0).name()));
    return OneAtATime.on(place, () -> settle(jobs, DebtBook.open(place, adds, today), place));
  }

  private int settle(List<ListedJob> jobs, DebtBook book, Path place) {
    if (!book.problems().isEmpty()) {
      book.problems().forEach(one -> console.complain(one.at() + ": " + ProblemLine.of(one)));
      throw new UsageException("a record that cannot be read in full is not written over");
    }
    int worst = ExitCode.CLEAR;
    boolean anyRead = false;
    for (ListedJob job : jobs) {
      int code = settle(job, book);
      anyRead |= code == ExitCode.CLEAR;
      worst = Math.max(worst, code);
    }
    if (!anyRead) {
      // An empty record would keep the findings of the first true run out.
      console.complain("nothing is recorded: no job could be read in full");
      return worst;
    }
    return write(book, place, worst);
  }

  private int write(DebtBook book, Path place, int worst) {
    book.forgetLostJobs();
    WholeFile.write(place.toString(), book.text());
    console.print(place + ": " + book.summary() + "\n");
    return worst;
  }

  @SuppressWarnings("CatchingUnchecked") // a fault in one job must not lose the others
  private int settle(ListedJob job, DebtBook book) {
    try {
      Review review =
          job.problem().map(Desk::unreadable).orElseGet(() -> desk.withDebts(job.name(), console));
      review.problems().forEach(one -> console.complain(one.at() + ": " + ProblemLine.of(one)));
      book.settle(Path.of(job.name()), review);
      return review.problems().isEmpty() ? ExitCode.CLEAR : ExitCode.UNUSABLE;
    } catch (RuntimeException | StackOverflowError e) {
      faults.report(job.name(), e);
      return ExitCode.FAULT;
    }
  }
}
