package clampwise.review;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.Limits;
import clampwise.catalogue.LimitsReader;
import clampwise.catalogue.References;
import clampwise.facts.Derivation;
import clampwise.facts.Facts;
import clampwise.facts.OtherCores;
import clampwise.finding.HouseRule;
import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.policy.Policy;
import clampwise.policy.PolicyFinder;
import clampwise.rulebook.Judgement;
import clampwise.rulebook.OwnRules;
import clampwise.rulebook.Rulebook;
import clampwise.source.SourceFiles;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * Reviews jobs: reads them, lays them out and holds them against the rules.
 *
 * <pre>{@code
 * Review review = new Reviewer().review(Path.of("barn/job.yaml"));
 * review.findings().forEach(finding -> System.out.println(finding.message()));
 * }</pre>
 *
 * <p>One reviewer may review many jobs, also from several threads. Nothing is written, and no file
 * is read but the job and the files it names beside itself. A job that cannot be read in full is
 * reviewed as far as it could be read; {@link Review#problems()} says what could not.
 */
public final class Reviewer {
  private final Supplier<Catalogue> catalogue;
  private final Supplier<Limits> limits;
  private final Supplier<Rulebook> rulebook;
  private final PolicyFinder policies;

  /**
   * A reviewer with the rules, limits and parts that ship with the program, under the policies that
   * stand beside and above each job.
   */
  public Reviewer() {
    this(Optional.empty());
  }

  /**
   * A reviewer with the rules, limits and parts that ship with the program.
   *
   * @param policy the one policy file that holds for every job; otherwise each job's own is found
   */
  public Reviewer(Optional<Path> policy) {
    // Done beside the reading of the job, the first needed first.
    OtherCores.begin(JobReader::prepare);
    this.catalogue = OtherCores.start(CatalogueReader::read);
    this.limits = OtherCores.start(LimitsReader::read);
    this.rulebook = OtherCores.start(Rulebook::prepared);
    this.policies =
        policy
            .map(file -> PolicyFinder.of(file, this::ruleIds))
            .orElseGet(() -> PolicyFinder.upward(this::ruleIds));
  }

  private Reviewer(Reviewer shipped, OwnRules own) {
    this.catalogue = shipped.catalogue;
    this.limits = shipped.limits;
    this.rulebook = OtherCores.start(() -> shipped.rulebook.get().with(own));
    this.policies = shipped.policies.speakingOf(this::ruleIds);
  }

  /** The same reviewer with rules that a company wrote for itself. */
  public Reviewer with(OwnRules own) {
    return new Reviewer(this, own);
  }

  /**
   * Reviews a job file.
   *
   * @param file the job file; its name in the review is the path as given here
   * @return what there is to say, even if the file does not exist or is no job at all
   */
  public Review review(Path file) {
    Task task = new Task(SourceFiles.nameOf(file), policy(file), SourceFiles.beside(file));
    Optional<byte[]> text = SourceFiles.read(file, task.problems());
    return text.map(bytes -> review(task, bytes)).orElseGet(task::unread);
  }

  /** The policy in force for a job file, which need not exist. */
  public Policy policy(Path file) {
    return policies.of(file);
  }

  /** Ids of everything that a policy may weigh. */
  public Set<String> ruleIds() {
    Set<String> ids = new TreeSet<>();
    rulebook.get().cards().forEach(card -> ids.add(card.id()));
    for (HouseRule rule : HouseRule.values()) {
      ids.add(rule.id());
    }
    return ids;
  }

  /**
   * Reviews a job that is not in a file, such as standard input.
   *
   * @param name what the job is called in the review
   * @param text the job, in UTF-8
   * @param files where the files lie that it names
   */
  public Review review(String name, byte[] text, SourceFiles files) {
    return review(new Task(name, policies.of(Path.of("job.yaml")), files), text);
  }

  /**
   * Reviews a text as if it were in a file, such as what an editor has not saved yet.
   *
   * @param file where it would stand; the files it names and its policy are looked for from there
   * @param text the job, in UTF-8
   */
  public Review review(Path file, byte[] text) {
    return review(new Task(SourceFiles.nameOf(file), policy(file), SourceFiles.beside(file)), text);
  }

  /**
   * Reviews the text of a file that was read already.
   *
   * @param files the files beside it, which keep what is read
   */
  public Review review(Path file, byte[] text, SourceFiles files) {
    return review(new Task(SourceFiles.nameOf(file), policy(file), files), text);
  }

  private Review review(Task task, byte[] text) {
    return task.read(text).map(job -> judge(task, job)).orElseGet(task::unread);
  }

  private Review judge(Task task, Job read) {
    Policy policy = task.policy();
    Catalogue parts = catalogue.get();
    Job job = References.check(read, parts, task.problems());
    Catalogue house = policy.limits().isEmpty() ? parts : parts.with(policy.limits()::over);
    Limits held = policy.limits().over(limits.get());
    Facts facts = Derivation.of(job, house, held, task.problems());
    Judgement judgement = rulebook.get().judge(facts, policy.weights());
    judgement.failed().forEach(task.problems()::add);
    return task.judged(job, facts, judgement);
  }
}
