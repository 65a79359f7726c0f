package clampwise.review;

import clampwise.facts.loads.CalcSheet;
import clampwise.finding.Coverage;
import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import clampwise.source.Problem;
import java.util.List;

/**
 * What a review of one job says.
 *
 * @param file the job file as the user named it
 * @param title what the job is called
 * @param modules modules that were laid out; of none nothing was reviewed
 * @param problems what could not be read
 * @param findings in the one order every report uses
 * @param notChecked what could not be judged, and why
 * @param coverage how far each rule got, in order of rule id
 * @param sheet the calculations behind it
 */
public record Review(
    String file,
    String title,
    int modules,
    List<Problem> problems,
    List<Finding> findings,
    List<NotChecked> notChecked,
    List<Coverage> coverage,
    CalcSheet sheet) {

  /** A review without calculations. */
  public Review(
      String file,
      String title,
      int modules,
      List<Problem> problems,
      List<Finding> findings,
      List<NotChecked> notChecked,
      List<Coverage> coverage) {
    this(file, title, modules, problems, findings, notChecked, coverage, CalcSheet.EMPTY);
  }
}
