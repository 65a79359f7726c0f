package clampwise.repository;

import java.util.List;
import java.util.Locale;

/** Which files of a folder are jobs. */
final class JobNames {

  /** What is said of a folder or pattern without a job. */
  static final String EXPECTED =
      "a file named job.yaml, job.yml or job.json, or whose name ends in .job.yaml, .job.yml or"
          + " .job.json";

  private static final List<String> ENDINGS = List.of("job.yaml", "job.yml", "job.json");

  private JobNames() {}

  static boolean isJob(String name) {
    String small = name.toLowerCase(Locale.ROOT);
    for (String ending : ENDINGS) {
      if (small.equals(ending) || small.endsWith("." + ending)) {
        return true;
      }
    }
    return false;
  }
}
