package clampwise.cli;

import clampwise.report.CalcSheetJson;
import clampwise.report.CalcSheetMarkdown;
import clampwise.report.Run;
import clampwise.review.Review;
import clampwise.rulebook.OwnRules;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;

/**
 * The files that a review is asked to write.
 *
 * @param calcSheet file that takes the calculations, if they are asked for
 * @param reports files that take reports
 * @param own rules of a company beside the shipped ones
 */
record ReviewFiles(Optional<String> calcSheet, ReportFiles reports, OwnRules own) {

  /** Writes all of them. */
  void write(List<Review> reviews, int exitCode) {
    calcSheet.ifPresent(file -> writeSheet(file, reviews));
    if (!reports.files().isEmpty()) {
      reports.write(new Run(reviews, Version.text(), exitCode, own));
    }
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
}
