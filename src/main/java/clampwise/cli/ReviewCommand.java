package clampwise.cli;

import clampwise.cli.ReviewOptions.Colouring;
import clampwise.report.CalcSheetJson;
import clampwise.report.CalcSheetMarkdown;
import clampwise.report.JsonReport;
import clampwise.report.LineReport;
import clampwise.report.Paint;
import clampwise.report.ProblemLine;
import clampwise.report.Run;
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

  /** Reviews every job; one that fails does not stop the others. */
  int run(ReviewOptions options) {
    List<Review> reviews = new ArrayList<>();
    int worst = ownRules();
    for (String job : options.jobs()) {
      worst = Math.max(worst, review(job, options, reviews));
    }
    try {
      writeFiles(options, reviews, worst);
    } finally {
      console.print(text(shown(reviews, options), options));
    }
    return worst;
  }

  /** Says what is wrong with own rules, which leaves them out and stops nothing else. */
  private int ownRules() {
    desk.own().notes().forEach(console::complain);
    for (Problem problem : desk.own().problems()) {
      console.complain("own rule left out: " + problem.at() + ": " + ProblemLine.of(problem));
    }
    return desk.own().problems().isEmpty() ? ExitCode.CLEAR : ExitCode.UNUSABLE;
  }

  private void writeFiles(ReviewOptions options, List<Review> reviews, int exitCode) {
    options.calcSheet().ifPresent(file -> writeSheet(file, reviews));
    if (!options.reports().files().isEmpty()) {
      options.reports().write(new Run(reviews, Version.text(), exitCode, desk.own()));
    }
  }

  private static List<Review> shown(List<Review> reviews, ReviewOptions options) {
    return options.quiet() ? reviews.stream().map(options::reduce).toList() : reviews;
  }

  private static void writeSheet(String file, List<Review> reviews) {
    if (file.endsWith(".json")) {
      StringWriter out = new StringWriter();
      CalcSheetJson.write(reviews, out);
      WholeFile.write(file, out.toString());
    } else {
      WholeFile.write(file, CalcSheetMarkdown.of(reviews));
    }
  }

  @SuppressWarnings("CatchingUnchecked") // a fault in one job must not lose the others
  private int review(String job, ReviewOptions options, List<Review> reviews) {
    try {
      Review review = desk.review(job, console);
      reviews.add(review);
      return exitCode(review, options);
    } catch (RuntimeException | StackOverflowError e) {
      faults.report(job, e);
      return ExitCode.FAULT;
    }
  }

  private static int exitCode(Review review, ReviewOptions options) {
    if (!review.problems().isEmpty()) {
      return ExitCode.UNUSABLE;
    }
    return options.fails(review) ? ExitCode.FINDINGS : ExitCode.CLEAR;
  }

  private CharSequence text(List<Review> reviews, ReviewOptions options) {
    return switch (options.format()) {
      case TEXT -> prose(reviews, options);
      case LINES -> lines(reviews, options.quiet());
      case JSON -> json(reviews);
    };
  }

  private String prose(List<Review> reviews, ReviewOptions options) {
    Sheet sheet = new Sheet(console.screen().textWidth(), paint(options.colouring()));
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

  private Paint paint(Colouring colouring) {
    boolean colour =
        switch (colouring) {
          case ALWAYS -> true;
          case NEVER -> false;
          case AUTO -> console.screen().coloursByItself(console.environment());
        };
    return colour ? new Colours() : Paint.NONE;
  }
}
