package clampwise.cli;

import clampwise.cli.ReviewOptions.Colouring;
import clampwise.report.JsonReport;
import clampwise.report.LineReport;
import clampwise.report.Paint;
import clampwise.report.ProblemLine;
import clampwise.report.Sheet;
import clampwise.report.TextReport;
import clampwise.review.Review;
import clampwise.source.Problem;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;

/** {@code clampwise review}: reviews jobs and prints what has to change. */
final class ReviewCommand {

  private final Console console;
  private final Desk desk;
  private final Faults faults;

  ReviewCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
    this.faults = new Faults(console);
  }

  /** Reviews every job; what is needed for more than one file is loaded only then. */
  int run(ReviewOptions options) {
    int own = ownRules();
    return options.isOneFile() ? one(options, own) : many(options, own);
  }

  private int many(ReviewOptions options, int own) {
    return new ManyJobs(console, desk, options).run(own);
  }

  private int one(ReviewOptions options, int own) {
    List<Review> reviews = new ArrayList<>();
    int code = Math.max(own, review(options.jobs().get(0), options, reviews));
    try {
      if (options.writesFiles()) {
        options.files(desk).write(reviews, code);
      }
    } finally {
      console.print(text(shown(reviews, options), options));
    }
    return code;
  }

  /** Says what is wrong with own rules, which leaves them out and stops nothing else. */
  int ownRules() {
    desk.own().notes().forEach(console::complain);
    for (Problem problem : desk.own().problems()) {
      console.complain("own rule left out: " + problem.at() + ": " + ProblemLine.of(problem));
    }
    return desk.own().problems().isEmpty() ? ExitCode.CLEAR : ExitCode.UNUSABLE;
  }

  private static List<Review> shown(List<Review> reviews, ReviewOptions options) {
    return options.quiet() ? reviews.stream().map(options::reduce).toList() : reviews;
  }

  @SuppressWarnings("CatchingUnchecked") // a fault in one job must not lose the others
  private int review(String job, ReviewOptions options, List<Review> reviews) {
    try {
      Review review = desk.review(job, console);
      reviews.add(review);
      return ExitCode.of(review, options);
    } catch (RuntimeException | StackOverflowError e) {
      faults.report(job, e);
      return ExitCode.FAULT;
    }
  }

  private CharSequence text(List<Review> reviews, ReviewOptions options) {
    return switch (options.format()) {
      case TEXT -> prose(reviews, options);
      case LINES -> lines(reviews, options.quiet());
      case JSON -> json(reviews);
    };
  }

  private String prose(List<Review> reviews, ReviewOptions options) {
    Sheet sheet = new Sheet(console.screen().textWidth(), paint(options.colouring(), console));
    TextReport report = new TextReport(sheet);
    reviews.forEach(options.quiet() ? report::writeQuietly : report::write);
    if (!options.quiet() && reviews.stream().anyMatch(Review::hasJob)) {
      report.writeCautions();
    }
    return sheet.toString();
  }

  private static StringBuilder lines(List<Review> reviews, boolean quiet) {
    StringBuilder out = new StringBuilder();
    LineReport report = new LineReport(out);
    reviews.forEach(quiet ? report::writeQuietly : report::write);
    return out;
  }

  private static String json(List<Review> reviews) {
    StringWriter out = new StringWriter();
    JsonReport.write(reviews, Version.text(), out);
    return out.toString();
  }

  static Paint paint(Colouring colouring, Console console) {
    boolean colour =
        switch (colouring) {
          case ALWAYS -> true;
          case NEVER -> false;
          case AUTO -> console.screen().coloursByItself(console.environment());
        };
    return colour ? new Colours() : Paint.NONE;
  }
}
