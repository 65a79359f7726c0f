package clampwise.gate;

import clampwise.job.Count;
import clampwise.job.Day;
import clampwise.job.Doc;
import clampwise.job.Text;
import clampwise.source.Problems;
import java.util.List;
import java.util.Optional;

/** The deviations that somebody accepted for one job, as they are written beside it. */
public record DeviationFile(
    @Doc("Accepted deviations, one for each finding.") List<DeviationFile.Deviation> accepted) {

  /** Tells where a deviation names nobody who answers for it, or says no reason. */
  void check(Problems problems) {
    for (Deviation one : accepted) {
      one.reason().isNeeded("why it is accepted", problems);
      one.by().isNeeded("the person or role that answers for it", problems);
    }
  }

  /** One finding that somebody answers for. */
  public record Deviation(
      @Doc("Id of the rule.") Text rule,
      @Doc("What the finding is about, as the reports name it.") Text subject,
      @Doc("Load case that governs, where loads are compared.") Optional<Text> loadCase,
      @Doc("Why it is accepted; shown in every report.") Text reason,
      @Doc("Person or role that answers for it.") Text by,
      @Doc("Day on which it was accepted.") Day on,
      @Doc("Last day on which it holds.") Day until,
      @Doc("Revision of the drawings for which it holds; every one when left out.")
          Optional<Text> revision,
      @Doc("Worst number for which it holds, with its unit; any when left out.")
          Optional<Text> value,
      @Doc("Number of places for which it holds; any when left out.") Optional<Count> places) {}
}
