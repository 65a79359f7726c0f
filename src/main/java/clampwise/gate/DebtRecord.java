package clampwise.gate;

import clampwise.source.SourceFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The record of known debts of a repository.
 *
 * @param path the file
 * @param file the file as it was read
 * @param byJob what it knows of each job, by its path from the folder of the record
 */
record DebtRecord(Path path, Beside<DebtFile> file, Map<String, List<Answer>> byJob) {

  /** What the record is called. */
  static final String FILE = "clampwise-debts.yaml";

  /**
   * Where the record of a job stands: in its folder or above it, no further than its repository.
   */
  static Optional<Path> find(Path job) {
    for (Path at = absolute(job).getParent(); at != null; at = at.getParent()) {
      if (Files.exists(at.resolve(FILE))) {
        return Optional.of(at.resolve(FILE));
      }
      if (Files.exists(at.resolve(".git"))) {
        break;
      }
    }
    return Optional.empty();
  }

  /** Reads a record, named in positions as someone at the working folder would name it. */
  static DebtRecord read(Path path) {
    Path here = Path.of("").toAbsolutePath();
    Path shown = path.startsWith(here) ? here.relativize(path) : path;
    Beside<DebtFile> file = Beside.read(shown, DebtFile.class, (debts, problems) -> {});
    Map<String, List<Answer>> byJob = new HashMap<>();
    file.content()
        .ifPresent(
            known ->
                known
                    .debts()
                    .forEach(
                        debt ->
                            byJob
                                .computeIfAbsent(debt.job().value(), job -> new ArrayList<>())
                                .add(new DebtAnswer(debt, known.recorded()))));
    return new DebtRecord(path, file, byJob);
  }

  /** What it knows of a job. */
  List<Answer> of(Path job) {
    return byJob.getOrDefault(nameOf(job), List.of());
  }

  /** A job as the record names it. */
  String nameOf(Path job) {
    Path folder = absolute(path).getParent();
    return SourceFiles.nameOf(folder == null ? job : folder.relativize(absolute(job)));
  }

  private static Path absolute(Path path) {
    return path.toAbsolutePath().normalize();
  }
}
