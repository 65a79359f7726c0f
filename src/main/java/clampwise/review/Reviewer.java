package clampwise.review;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.Limits;
import clampwise.catalogue.LimitsReader;
import clampwise.catalogue.References;
import clampwise.facts.Derivation;
import clampwise.facts.Facts;
import clampwise.facts.OtherCores;
import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.rulebook.Judgement;
import clampwise.rulebook.Rulebook;
import clampwise.source.Problems;
import clampwise.source.SourceFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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

  /** A reviewer with the rules, limits and parts that ship with the program. */
  public Reviewer() {
    // Done beside the reading of the job, the first needed first.
    OtherCores.begin(JobReader::prepare);
    this.catalogue = OtherCores.start(CatalogueReader::read);
    this.limits = OtherCores.start(LimitsReader::read);
    this.rulebook = OtherCores.start(Rulebook::prepared);
  }

  /**
   * Reviews a job file.
   *
   * @param file the job file; its name in the review is the path as given here
   * @return what there is to say, even if the file does not exist or is no job at all
   */
  public Review review(Path file) {
    Problems problems = new Problems();
    SourceFiles files = SourceFiles.beside(file);
    Optional<Job> job = JobReader.read(file, files, problems);
    return review(SourceFiles.nameOf(file), job, files, problems);
  }

  /**
   * Reviews a job that is not in a file, such as standard input.
   *
   * @param name what the job is called in the review
   * @param text the job, in UTF-8
   * @param files where the files lie that it names
   */
  public Review review(String name, byte[] text, SourceFiles files) {
    Problems problems = new Problems();
    return review(name, JobReader.read(name, text, files, problems), files, problems);
  }

  private Review review(String name, Optional<Job> job, SourceFiles files, Problems problems) {
    return job.map(read -> judge(name, read, files, problems))
        .orElseGet(
            () ->
                new Review(
                    name,
                    "",
                    0,
                    problems.sorted(),
                    List.of(),
                    List.of(),
                    List.of(),
                    Optional.empty(),
                    files.taken()));
  }

  private static int modules(Facts facts) {
    return facts.layout().fields().stream().mapToInt(field -> field.modules().size()).sum();
  }

  private Review judge(String name, Job read, SourceFiles files, Problems problems) {
    Job job = References.check(read, catalogue.get(), problems);
    Facts facts = Derivation.of(job, catalogue.get(), limits.get(), problems);
    Judgement judgement = rulebook.get().judge(facts);
    return new Review(
        name,
        job.job().value(),
        modules(facts),
        problems.sorted(),
        judgement.findings(),
        judgement.notChecked(),
        judgement.coverage(),
        Optional.of(facts),
        files.taken());
  }
}
