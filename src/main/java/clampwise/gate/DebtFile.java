package clampwise.gate;

import clampwise.job.Count;
import clampwise.job.Day;
import clampwise.job.Doc;
import clampwise.job.Text;
import java.util.List;
import java.util.Optional;

/** The findings that a repository of jobs had when clampwise was adopted. */
public record DebtFile(
    @Doc("Day on which the record was begun.") Day recorded,
    @Doc("Known debts, job by job.") List<DebtFile.Debt> debts) {

  /** One finding that was there before. */
  public record Debt(
      @Doc("Job file, from the folder of the record.") Text job,
      @Doc("Id of the rule.") Text rule,
      @Doc("What the finding is about.") Text subject,
      @Doc("Load case that governs, where loads are compared.") Optional<Text> loadCase,
      @Doc("Number that was found, with its unit.") Optional<Text> value,
      @Doc("Number of places at which it showed.") Optional<Count> places) {}
}
