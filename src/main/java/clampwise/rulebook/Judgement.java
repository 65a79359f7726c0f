package clampwise.rulebook;

import clampwise.finding.Coverage;
import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import java.util.List;

/**
 * What the rules say of a job.
 *
 * @param findings in the one order every report uses
 * @param notChecked what could not be judged, in order of place
 * @param coverage how far each rule got, in order of rule id
 */
public record Judgement(
    List<Finding> findings, List<NotChecked> notChecked, List<Coverage> coverage) {}
