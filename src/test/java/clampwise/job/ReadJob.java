package clampwise.job;

import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.List;
import java.util.Optional;

/** A job read for a test, with what was said about it. */
record ReadJob(Optional<Job> job, List<Problem> problems) {

  static final String SMALL =
      """
      job: Small barn
      panels:
        r: {kind: standing-seam, pitch: 16 in}
      planes:
        p: {panel: r, slope: 4:12, size: 100 ft x 31 ft 7 1/2 in}
      modules:
        m: {length: 1722 mm, width: 1134 mm}
      fields:
        A:
          plane: p
          module: m
          orientation: landscape
      """;

  static ReadJob of(String text) {
    Problems problems = new Problems();
    Optional<Job> job = JobReader.read("job.yaml", text, problems);
    return new ReadJob(job, problems.sorted());
  }

  /** A small job with more lines at its end, indented as keys of its field. */
  static ReadJob withField(String lines) {
    return of(SMALL + lines.indent(4));
  }

  Field field(String name) {
    return job.orElseThrow().fields().find(name).orElseThrow();
  }

  /** Every problem as {@code line:column found; expected; nearest}. */
  List<String> said() {
    return problems.stream().map(ReadJob::said).toList();
  }

  private static String said(Problem problem) {
    String place = problem.at().start().line() + ":" + problem.at().start().column();
    String nearest = problem.nearest().map(word -> "; nearest " + word).orElse("");
    return place + " " + problem.found() + "; " + problem.expected() + nearest;
  }
}
