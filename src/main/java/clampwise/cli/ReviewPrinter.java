package clampwise.cli;

import clampwise.batch.JobResult;
import clampwise.cli.ReviewOptions.Format;
import clampwise.report.JobTable;
import clampwise.report.JsonReport;
import clampwise.report.LineReport;
import clampwise.report.Paint;
import clampwise.report.Sheet;
import clampwise.report.TextReport;
import clampwise.review.Review;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;

/** Prints the reviews of many jobs as they come, so that none has to be kept for it. */
final class ReviewPrinter {

  private final Console console;
  private final ReviewOptions options;
  private final Paint paint;
  private final JobTable table = new JobTable();
  private final List<Review> kept = new ArrayList<>();
  private boolean printed;
  private boolean hasJob;

  ReviewPrinter(Console console, ReviewOptions options, Paint paint) {
    this.console = console;
    this.options = options;
    this.paint = paint;
  }

  /** Prints what became of the next job; a fault is told on standard error. */
  void print(JobResult job) {
    job.review().ifPresentOrElse(this::print, () -> fault(job.fault()));
  }

  private void fault(String text) {
    table.addFault();
    console.complain(text);
  }

  private void print(Review whole) {
    Review review = options.quiet() ? options.reduce(whole) : whole;
    hasJob |= review.hasJob();
    table.add(review);
    switch (options.format()) {
      case TEXT -> prose(review);
      case LINES -> lines(review);
      case JSON -> kept.add(review);
    }
  }

  private void prose(Review review) {
    Sheet sheet = sheet();
    TextReport report = new TextReport(sheet);
    if (options.quiet()) {
      report.writeQuietly(review);
    } else {
      report.write(review);
    }
    page(sheet);
  }

  private void lines(Review review) {
    StringBuilder out = new StringBuilder();
    LineReport report = new LineReport(out);
    if (options.quiet()) {
      report.writeQuietly(review);
    } else {
      report.write(review);
    }
    console.print(out);
  }

  /** Prints what stands below all jobs. */
  void finish() {
    if (options.format() == Format.JSON) {
      StringWriter out = new StringWriter();
      JsonReport.write(kept, Version.text(), out);
      console.print(out.toString());
    } else if (options.format() == Format.TEXT && !options.quiet()) {
      Sheet sheet = sheet();
      table.write(sheet);
      if (hasJob) {
        new TextReport(sheet).writeCautions();
      }
      page(sheet);
    }
  }

  private Sheet sheet() {
    return new Sheet(console.screen().textWidth(), paint);
  }

  /** Pages follow one another like the parts of one, with an empty line between. */
  private void page(Sheet sheet) {
    String text = sheet.toString();
    if (!text.isEmpty()) {
      console.print(printed ? "\n" + text : text);
      printed = true;
    }
  }
}
