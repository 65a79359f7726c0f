package clampwise.bench;

import clampwise.review.Reviewer;
import clampwise.source.SourceFiles;
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What loads add to a warm review: the same job with and without the keys that loads need, in turn.
 * It counts the processor time of the whole program, which other work on the machine changes less
 * than the time of the clock; run by bench/loads.sh.
 */
public final class WithoutLoads {

  private static final Pattern LOADS =
      Pattern.compile(
          "(?m)^(?:  (?:wind-speed|exposure|terrain|ground-snow):.*|loads:(?:\\R  .*)*)\\R");
  private static final int ROUNDS = 21;
  private static final int REVIEWS = 20;

  private final Reviewer reviewer = new Reviewer();
  private final OperatingSystemMXBean system =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private WithoutLoads() {}

  /** The examples to compare, by name. */
  public static void main(String[] examples) throws IOException {
    for (String example : examples) {
      new WithoutLoads()
          .compare(example, Files.readString(Path.of("examples", example, "job.yaml")));
    }
  }

  private void compare(String example, String with) {
    String without = LOADS.matcher(with).replaceAll("");
    double[] withMs = new double[ROUNDS];
    double[] withoutMs = new double[ROUNDS];
    for (int round = -ROUNDS; round < ROUNDS; round++) {
      int at = Math.max(round, 0);
      withMs[at] = reviewMs(with);
      withoutMs[at] = reviewMs(without);
    }
    double most = median(withMs);
    double least = median(withoutMs);
    System.out.printf(
        Locale.ROOT,
        "%s: %.1f ms with loads, %.1f ms without: %.2f times%n",
        example,
        most,
        least,
        most / least);
  }

  private double reviewMs(String job) {
    byte[] text = job.getBytes(StandardCharsets.UTF_8);
    long before = system.getProcessCpuTime();
    for (int i = 0; i < REVIEWS; i++) {
      reviewer.review("job", text, SourceFiles.none());
    }
    return (system.getProcessCpuTime() - before) / 1e6 / REVIEWS;
  }

  private static double median(double[] values) {
    return Arrays.stream(values).sorted().toArray()[values.length / 2];
  }
}
