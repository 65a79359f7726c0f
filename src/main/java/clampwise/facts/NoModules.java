package clampwise.facts;

import clampwise.facts.layout.Layout;
import clampwise.facts.roof.CountClaim;
import clampwise.facts.roof.ZoneWidthClaim;
import clampwise.facts.survey.AssumedFact;
import clampwise.finding.Subject;
import clampwise.job.Job;
import java.util.Set;

/** A layout without a single module: every question that asks about modules goes unanswered. */
public final class NoModules {

  /** Simple names of the facts that stand whether or not there are modules. */
  private static final Set<String> OF_THE_ROOF =
      Set.of(
          AssumedFact.class.getSimpleName(),
          CountClaim.class.getSimpleName(),
          ZoneWidthClaim.class.getSimpleName());

  private NoModules() {}

  /** Whether facts of a type, given by its simple name, need modules. */
  public static boolean concern(String factType) {
    return !OF_THE_ROOF.contains(factType);
  }

  static void tell(Layout layout, Answers answers) {
    if (layout.fields().stream().allMatch(field -> field.modules().isEmpty())) {
      Job job = layout.job();
      answers.missing(Fact.class, Subject.of("fields"), reason(job), job.job().at());
    }
  }

  private static String reason(Job job) {
    boolean none = job.fields().isEmpty() && !job.unreadable().touches("fields");
    return "no module was reviewed: "
        + (none
            ? "the job has no fields (fields)"
            : "no field could be read and laid out as written");
  }
}
