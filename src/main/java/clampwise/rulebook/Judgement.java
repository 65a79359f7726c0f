package clampwise.rulebook;

import clampwise.finding.Coverage;
import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import clampwise.source.Problem;
import java.util.List;

/**
 * What the rules say of a job.
 *
 * @param findings in the one order every report uses
 * @param notChecked what could not be judged, in order of place
 * @param coverage how far each rule got, in order of rule id
 * @param failed rules of a company's own that broke off, which say nothing of this job
 */
public record Judgement(
    List<Finding> findings,
    List<NotChecked> notChecked,
    List<Coverage> coverage,
    List<Problem> failed) {

  /** What rules say that all could be asked. */
  public Judgement(List<Finding> findings, List<NotChecked> notChecked, List<Coverage> coverage) {
    this(findings, notChecked, coverage, List.of());
  }

  /** The same with what broke off. */
  Judgement without(List<Problem> broken) {
    return new Judgement(findings, notChecked, coverage, broken);
  }
}
