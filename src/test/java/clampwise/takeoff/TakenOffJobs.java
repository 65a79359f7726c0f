package clampwise.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.review.QuantityTaker;
import clampwise.review.TakenOff;
import clampwise.source.SourceFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Take-offs of jobs for tests. */
final class TakenOffJobs {

  private static final Path BASE = Path.of("rules/base/seam-roof.yaml");
  private static final String BLOCK = "block: {at: [20 ft, 8 ft], rows: 3, columns: 4}";

  private TakenOffJobs() {}

  /** Twelve modules on seams, with a line of the job replaced. */
  static TakenOff replaced(String line, String by) {
    return of(written(line, by));
  }

  /** The same roof with another block of modules. */
  static TakenOff block(String block) {
    return of(written(block));
  }

  /** The text of that job. */
  static String written(String block) {
    return written(BLOCK, "block: {at: [9 ft, 7 ft], " + block + "}");
  }

  private static String written(String line, String by) {
    try {
      String job = Files.readString(BASE);
      assertThat(job).contains(line);
      return job.replace(line, by);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static TakenOff of(String job) {
    byte[] text = job.getBytes(StandardCharsets.UTF_8);
    return new QuantityTaker(Optional.empty()).takeOff("job.yaml", text, SourceFiles.none());
  }

  static TakenOff file(String file, Optional<Double> spares) {
    return new QuantityTaker(spares).takeOff(Path.of(file));
  }

  /** What a job takes that could be read without a problem. */
  static Quantities quantities(TakenOff job) {
    assertThat(job.problems()).isEmpty();
    return job.quantities().orElseThrow();
  }

  /** The line of a part. */
  static PartLine line(Quantities quantities, PartKind kind) {
    return quantities.lines().stream()
        .filter(line -> line.part().kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  /** How many of a part are drawn. */
  static int drawn(Quantities quantities, PartKind kind) {
    return quantities.lines().stream()
        .filter(line -> line.part().kind() == kind)
        .mapToInt(PartLine::count)
        .sum();
  }
}
