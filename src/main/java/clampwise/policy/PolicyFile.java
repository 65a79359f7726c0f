package clampwise.policy;

import clampwise.finding.Threshold;
import clampwise.job.Choice;
import clampwise.job.Doc;
import clampwise.job.Flag;
import clampwise.job.Named;
import clampwise.job.Text;
import java.util.Optional;

/** A policy as it is written: what a house asks of the jobs in a folder and below it. */
public record PolicyFile(
    @Doc("Whether policies of outer folders stay out; no when left out.") Optional<Flag> top,
    @Doc("From which severity on a finding fails the run.") Optional<Choice<Threshold>> failOn,
    @Doc("What rules weigh here, by rule id.") Named<PolicyFile.Rule> rules,
    @Doc("Code editions and local variants that apply.") Optional<PolicyFile.Codes> codes,
    @Doc("House limits in place of shipped ones, by the name of the limit.")
        Named<PolicyFile.HouseLimit> limits,
    @Doc("Documents by kind: required here, or not required any more in this folder.")
        Named<Choice<PolicyFile.Need>> documents,
    @Doc("How reviews are printed unless the command says otherwise.")
        Optional<PolicyFile.Output> output) {

  /** What a rule weighs. */
  public record Rule(
      @Doc("Severity of its findings here; off is not asked at all.") Choice<Weight> severity,
      @Doc("Why it differs from the shipped severity.") Text reason) {}

  /** How much the findings of a rule weigh. */
  public enum Weight {
    ERROR,
    WARNING,
    NOTE,
    OFF
  }

  /** Codes in force; a job that names none stands under these. */
  public record Codes(
      @Doc("Wind and snow standard: asce-7-16, asce-7-22 or en-1991.") Optional<Text> loads,
      @Doc("Electrical code, such as nec-2023.") Optional<Text> electrical,
      @Doc("Fire rule set or local variant, such as ifc-2024 or oregon.") Optional<Text> fire) {}

  /** A limit that a house sets itself. */
  public record HouseLimit(
      @Doc("The limit, with its unit.") Text value,
      @Doc("Why the house has a limit of its own; shown in every finding.") Text reason) {}

  /** Whether a document is asked for. */
  public enum Need {
    REQUIRED,
    NOT_REQUIRED
  }

  /** How reviews are printed. */
  public record Output(
      @Doc("Form of the printed review.") Optional<Choice<Format>> format,
      @Doc("Whether only what fails is printed.") Optional<Flag> quiet) {}

  /** Form of a printed review. */
  public enum Format {
    TEXT,
    LINES,
    JSON
  }
}
