package clampwise.review;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.Limits;
import clampwise.catalogue.LimitsReader;
import clampwise.catalogue.References;
import clampwise.facts.OtherCores;
import clampwise.facts.layout.BondingNames;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.LayoutBuilder;
import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.source.Problems;
import clampwise.source.SourceFiles;
import clampwise.takeoff.Quantities;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Takes off jobs: reads them, lays them out and counts what they take. No rule is asked.
 *
 * <pre>{@code
 * TakenOff barn = new QuantityTaker(Optional.empty()).takeOff(Path.of("barn/job.yaml"));
 * }</pre>
 *
 * <p>A job that cannot be read in full is counted as far as it could be read; {@link
 * TakenOff#problems()} says what could not, and what is missing is listed as not counted.
 */
public final class QuantityTaker {

  private final Supplier<Catalogue> catalogue;
  private final Supplier<Limits> limits;
  private final Optional<Double> spares;

  /**
   * With the parts, limits and assumptions that ship with the program.
   *
   * @param spares share of spares; that of each job, else the usual one, when empty
   */
  public QuantityTaker(Optional<Double> spares) {
    OtherCores.begin(JobReader::prepare);
    this.catalogue = OtherCores.start(CatalogueReader::read);
    this.limits = OtherCores.start(LimitsReader::read);
    this.spares = spares;
  }

  /** The take-off of a job file. */
  public TakenOff takeOff(Path file) {
    Problems problems = new Problems();
    return takeOff(SourceFiles.nameOf(file), JobReader.read(file, problems), problems);
  }

  /**
   * The take-off of a job that is not in a file, such as standard input.
   *
   * @param name what the job is called
   * @param text the job, in UTF-8
   * @param files where the files lie that it names
   */
  public TakenOff takeOff(String name, byte[] text, SourceFiles files) {
    Problems problems = new Problems();
    return takeOff(name, JobReader.read(name, text, files, problems), problems);
  }

  private TakenOff takeOff(String name, Optional<Job> job, Problems problems) {
    Optional<Quantities> quantities = job.map(read -> count(read, problems));
    String title = job.map(read -> read.job().value()).orElse("");
    return new TakenOff(name, title, problems.sorted(), quantities);
  }

  private Quantities count(Job read, Problems problems) {
    Job job = References.check(read, catalogue.get(), problems);
    Layout layout = new LayoutBuilder(limits.get()).build(job, catalogue.get(), problems);
    BondingNames.check(layout, problems);
    return Quantities.of(layout, limits.get(), spares);
  }
}
