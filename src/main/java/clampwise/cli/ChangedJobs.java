package clampwise.cli;

import clampwise.batch.Crew;
import clampwise.gate.DeviationFiles;
import clampwise.job.JobReader;
import clampwise.policy.PolicyFinder;
import clampwise.repository.Changes;
import clampwise.repository.ListedJob;
import clampwise.repository.RevisionException;
import clampwise.source.Problems;
import clampwise.source.SourceFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The jobs that something has changed for since a revision: the job itself, a file it names, a
 * policy or a record of debts over it, the deviations accepted beside it.
 */
final class ChangedJobs {

  private static final String STANDARD_INPUT = "-";

  private final String revision;
  private final Desk desk;
  private final Map<Path, Changes> byFolder = new HashMap<>();
  private final Map<Path, Changes> byRoot = new HashMap<>();

  private ChangedJobs(String revision, Desk desk) {
    this.revision = revision;
    this.desk = desk;
  }

  /** Those of some jobs that are affected; what is no job stays, to be said. */
  static List<ListedJob> of(List<ListedJob> jobs, String revision, Crew crew, Desk desk) {
    ChangedJobs changed = new ChangedJobs(revision, desk);
    try {
      jobs.forEach(changed::open);
      List<ListedJob> affected = new ArrayList<>();
      crew.run(
          jobs.size(),
          number -> changed.isAffected(jobs.get(number)) ? List.of(jobs.get(number)) : List.of(),
          (List<ListedJob> one) -> affected.addAll(one));
      return affected;
    } finally {
      changed.byRoot.values().forEach(Changes::close);
    }
  }

  /** A job that can be compared: one that is there. */
  private static boolean isFile(ListedJob job) {
    try {
      return job.problem().isEmpty()
          && !job.name().equals(STANDARD_INPUT)
          && Files.isRegularFile(Path.of(job.name()));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  private static Path folder(Path file) {
    Path folder = file.toAbsolutePath().normalize().getParent();
    return folder == null ? file.toAbsolutePath() : folder;
  }

  private void open(ListedJob job) {
    if (isFile(job)) {
      byFolder.computeIfAbsent(folder(Path.of(job.name())), this::changes);
    }
  }

  private Changes changes(Path folder) {
    try {
      Changes changes = Changes.since(revision, folder);
      return byRoot.computeIfAbsent(changes.root(), root -> changes);
    } catch (RevisionException e) {
      throw new UsageException("--changed cannot compare: " + e.getMessage());
    }
  }

  private boolean isAffected(ListedJob job) {
    if (!isFile(job)) {
      return true;
    }
    Path file = Path.of(job.name());
    Changes changes = byFolder.get(folder(file));
    return changes == null || touchesAny(changes, around(file)) || touchesAny(changes, named(file));
  }

  private static boolean touchesAny(Changes changes, List<Path> files) {
    try {
      for (Path file : files) {
        if (changes.touches(file)) {
          return true;
        }
      }
      return false;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The job and what may stand beside and above it, whether it does or not. */
  private List<Path> around(Path job) {
    List<Path> files = new ArrayList<>(List.of(job, DeviationFiles.of(job)));
    desk.policy(job.toString()).sources().forEach(policy -> files.add(Path.of(policy.file())));
    for (Path policy : PolicyFinder.places(job)) {
      files.add(policy);
      files.add(policy.resolveSibling(DeviationFiles.RECORD));
    }
    return files;
  }

  /** The files that a job names, whether they are there or not. */
  private static List<Path> named(Path job) {
    SourceFiles files = SourceFiles.beside(job);
    JobReader.read(job, files, new Problems());
    List<Path> named = new ArrayList<>();
    files.asked().keySet().forEach(name -> files.place(name).ifPresent(named::add));
    return named;
  }
}
