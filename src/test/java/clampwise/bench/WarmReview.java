package clampwise.bench;

import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.source.SourceFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long one review takes in a program that stays up, such as an editor; run by bench/warm.sh.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class WarmReview {

  /** The example that is reviewed. */
  @Param({"barn", "barn-junior"})
  public String example = "";

  private final Reviewer reviewer = new Reviewer();
  private byte[] text = {};

  /** Reads the job once; reading the disk is no part of the measure. */
  @Setup
  public void read() throws IOException {
    text = Files.readAllBytes(Path.of("examples", example, "job.yaml"));
  }

  /** Text to findings. */
  @Benchmark
  public Review review() {
    return reviewer.review(example, text, SourceFiles.none());
  }
}
