package clampwise.review;

import clampwise.facts.Facts;
import clampwise.finding.Finding;
import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.job.Text;
import clampwise.policy.Policy;
import clampwise.policy.PolicyFindings;
import clampwise.rulebook.Judgement;
import clampwise.source.Node;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.SourceFiles;
import clampwise.source.SourceText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The review of one job on its way.
 *
 * @param name what the job is called in the review
 * @param policy what its house asks for
 * @param files where the files lie that it names
 * @param problems what could not be read so far
 */
record Task(String name, Policy policy, SourceFiles files, Problems problems) {

  private static final Comparator<Finding> BY_SEVERITY = Comparator.comparing(Finding::severity);

  Task(String name, Policy policy, SourceFiles files) {
    this(name, policy, files, new Problems());
  }

  /** The job of a text, with what the policy writes for jobs that say nothing themselves. */
  Optional<Job> read(byte[] text) {
    Optional<Node.Mapping> under = policy.underlay();
    return under.isPresent()
        ? JobReader.read(new SourceText(name, text), under.get(), files, problems)
        : JobReader.read(name, text, files, problems);
  }

  /** The review of a job that could not be read. */
  Review unread() {
    return review(Optional.empty(), new Judgement(List.of(), List.of(), List.of()));
  }

  /** The review of a job that the rules have judged. */
  Review judged(Job job, Facts facts, Judgement judgement) {
    List<Finding> asked = PolicyFindings.of(job, policy);
    List<Finding> all = new ArrayList<>(judgement.findings());
    all.addAll(asked);
    if (!asked.isEmpty()) {
      all.sort(BY_SEVERITY);
    }
    Judgement whole = new Judgement(all, judgement.notChecked(), judgement.coverage());
    return review(Optional.of(facts), whole);
  }

  private Review review(Optional<Facts> facts, Judgement judgement) {
    Optional<Job> job = facts.map(known -> known.layout().job());
    return new Review(
        name,
        job.map(read -> read.job().value()).orElse(""),
        job.flatMap(Job::revision).map(Text::value).orElse(""),
        facts.map(Task::modules).orElse(0),
        unreadPlaces(),
        judgement.findings(),
        judgement.notChecked(),
        judgement.coverage(),
        List.of(),
        policy.failOn(),
        facts,
        sources());
  }

  private static int modules(Facts facts) {
    return facts.layout().fields().stream().mapToInt(field -> field.modules().size()).sum();
  }

  private List<Problem> unreadPlaces() {
    return policy.problems().isEmpty()
        ? problems.sorted()
        : Stream.concat(policy.problems().stream(), problems.sorted().stream()).toList();
  }

  /** The job first, then what it names, then the policies over it. */
  private List<SourceText> sources() {
    List<SourceText> all = new ArrayList<>(files.taken());
    all.addAll(policy.sources());
    return List.copyOf(all);
  }
}
