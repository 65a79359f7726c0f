package clampwise.cli;

import clampwise.report.ReportKind;
import clampwise.report.Run;
import clampwise.source.Nearest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The files that take reports of a run; each is written whole or not at all. */
record ReportFiles(List<ReportFile> files) {

  static final ReportFiles NONE = new ReportFiles(List.of());

  /** A file and what is written into it. */
  record ReportFile(String name, ReportKind kind) {}

  /**
   * The files of some names, looked at before any job is reviewed.
   *
   * @param jobs the jobs, none of which may be written over
   */
  static ReportFiles of(List<String> names, List<String> jobs) {
    List<ReportFile> files = new ArrayList<>();
    Set<Path> taken = new HashSet<>();
    for (String name : names) {
      ReportKind kind = ReportKind.of(name).orElseThrow(() -> unknown(name));
      Path path = path(name);
      WholeFile.checkFolder(path);
      if (!taken.add(absolute(path))) {
        throw new UsageException("--report names " + name + " twice; give each report its own");
      }
      files.add(new ReportFile(name, kind));
    }
    ReportFiles all = new ReportFiles(List.copyOf(files));
    all.checkFree(jobs);
    return all;
  }

  /** Refuses to write over any of these jobs. */
  void checkFree(List<String> jobs) {
    Set<Path> taken = new HashSet<>();
    files.forEach(file -> taken.add(absolute(path(file.name()))));
    if (!taken.isEmpty()) {
      jobs.forEach(job -> checkFree(job, taken));
    }
  }

  /** Whether any of them shows what only the facts of a job know. */
  boolean needFacts() {
    return files.stream().anyMatch(file -> file.kind().needsFacts());
  }

  /** Refuses reports for which reviews do not suffice. */
  void checkWithoutFacts() {
    for (ReportFile file : files) {
      if (file.kind().needsFacts()) {
        throw new UsageException(
            file.name()
                + " needs the layouts themselves, which parts do not carry; review its job alone");
      }
    }
  }

  /** Writes every report. */
  void write(Run run) {
    for (ReportFile file : files) {
      WholeFile.write(file.name(), out -> file.kind().write(run, out));
    }
  }

  private static UsageException unknown(String name) {
    List<String> known = ReportKind.endings();
    String ending = ending(name);
    return new UsageException(
        "--report takes a file that ends in "
            + String.join(", ", known)
            + "; "
            + (name.isBlank() ? "an empty name" : name)
            + " does not"
            + Hint.of(Nearest.to(ending, known)));
  }

  private static String ending(String name) {
    int dot = name.lastIndexOf('.');
    return dot < 0 ? "" : name.substring(dot);
  }

  private static void checkFree(String job, Set<Path> taken) {
    if (!job.equals("-") && taken.contains(absolute(path(job)))) {
      throw new UsageException("--report would write over the job " + job + "; choose another");
    }
  }

  /** The file that a name leads to, over all links; it need not exist yet. */
  private static Path absolute(Path path) {
    try {
      Path file = WholeFile.behindLinks(path.toAbsolutePath());
      if (Files.exists(file)) {
        return file.toRealPath();
      }
      return file.resolveSibling("").toRealPath().resolve(file.getName(file.getNameCount() - 1));
    } catch (IOException e) {
      return path.toAbsolutePath().normalize();
    }
  }

  private static Path path(String name) {
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw new UsageException(name + " is not a file name here");
    }
  }
}
