package clampwise.gate;

import java.nio.file.Path;
import java.util.List;

/** Where the accepted deviations of a job are written. */
public final class DeviationFiles {

  /** What the record of known debts is called. */
  public static final String RECORD = DebtRecord.FILE;

  private static final List<String> ENDINGS = List.of(".yaml", ".yml", ".json");

  private static final String SUFFIX = ".accepted.yaml";

  private DeviationFiles() {}

  /** The file beside a job: {@code job.accepted.yaml} beside {@code job.yaml}. */
  public static Path of(Path job) {
    String name = String.valueOf(job.getFileName());
    for (String ending : ENDINGS) {
      if (name.endsWith(ending)) {
        name = name.substring(0, name.length() - ending.length());
        break;
      }
    }
    return job.resolveSibling(name + SUFFIX);
  }
}
