package clampwise.cli;

import clampwise.report.Paint;
import clampwise.report.ProblemLine;
import clampwise.report.Sheet;
import clampwise.report.TakeoffCsv;
import clampwise.report.TakeoffJson;
import clampwise.report.TakeoffText;
import clampwise.review.QuantityTaker;
import clampwise.review.TakenOff;
import clampwise.source.Problem;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** {@code clampwise takeoff}: counts what jobs take. */
final class TakeoffCommand {

  private final Console console;
  private final Faults faults;

  TakeoffCommand(Console console) {
    this.console = console;
    this.faults = new Faults(console);
  }

  /** Counts every job; one that fails does not stop the others. */
  int run(TakeoffOptions options) {
    QuantityTaker taker = new QuantityTaker(options.spares());
    JobSource<TakenOff> source =
        new JobSource<>(taker::takeOff, taker::takeOff, TakeoffCommand::unreadable);
    List<TakenOff> jobs = new ArrayList<>();
    int worst = ExitCode.CLEAR;
    for (String name : options.jobs()) {
      worst = Math.max(worst, takeOff(name, source, jobs));
    }
    console.print(text(jobs, options.format()));
    return worst;
  }

  @SuppressWarnings("CatchingUnchecked") // a fault in one job must not lose the others
  private int takeOff(String name, JobSource<TakenOff> source, List<TakenOff> jobs) {
    try {
      TakenOff job = source.take(name, console);
      jobs.add(job);
      return job.problems().isEmpty() ? ExitCode.CLEAR : ExitCode.UNUSABLE;
    } catch (RuntimeException | StackOverflowError e) {
      faults.report(name, e);
      return ExitCode.FAULT;
    }
  }

  private static TakenOff unreadable(Problem problem) {
    return new TakenOff(problem.at().file(), "", List.of(problem), Optional.empty());
  }

  private String text(List<TakenOff> jobs, TakeoffOptions.Format format) {
    return switch (format) {
      case TEXT -> prose(jobs);
      case CSV -> table(jobs);
      case JSON -> json(jobs);
    };
  }

  private String prose(List<TakenOff> jobs) {
    boolean colours = console.screen().coloursByItself(console.environment());
    Sheet sheet = new Sheet(console.screen().textWidth(), colours ? new Colours() : Paint.NONE);
    TakeoffText report = new TakeoffText(sheet);
    jobs.forEach(report::write);
    if (jobs.stream().anyMatch(job -> job.quantities().isPresent())) {
      report.writeCaution();
    }
    return sheet.toString();
  }

  /** A table has no room for problems of reading. */
  private String table(List<TakenOff> jobs) {
    for (TakenOff job : jobs) {
      job.problems().forEach(each -> console.complain(each.at() + ": " + ProblemLine.of(each)));
    }
    return TakeoffCsv.of(jobs);
  }

  private static String json(List<TakenOff> jobs) {
    StringWriter out = new StringWriter();
    TakeoffJson.write(jobs, Version.text(), out);
    return out.toString();
  }
}
