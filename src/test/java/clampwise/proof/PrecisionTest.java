package clampwise.proof;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Severity;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.source.SourceFiles;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Jobs in which nothing is wrong are told so: no error, no problem. */
class PrecisionTest {
  private static final Reviewer REVIEWER = new Reviewer();
  private static final int SEEDS = 8;

  static Stream<JobKind> kinds() {
    return JobKind.ALL.stream();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void generatedJobsAreClean(JobKind kind) {
    assertThat(LongStream.rangeClosed(1, SEEDS).boxed())
        .allSatisfy(seed -> assertThat(said(CleanJob.of(kind, seed))).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"barn", "farmhouse", "workshop-ribs", "shelter-corrugated"})
  void examplesDrawnCleanAreClean(String example) {
    Review review = REVIEWER.review(Path.of("examples", example, "job.yaml"));
    assertThat(said(review)).isEmpty();
  }

  private static List<String> said(CleanJob job) {
    String text = job.draft().written().text();
    return said(REVIEWER.review("job", text.getBytes(StandardCharsets.UTF_8), SourceFiles.none()));
  }

  private static List<String> said(Review review) {
    List<String> said = new ArrayList<>();
    review.problems().forEach(each -> said.add(each.at() + " " + each.found()));
    review.findings().stream()
        .filter(each -> each.severity() == Severity.ERROR || Boolean.getBoolean("proof.all"))
        .forEach(each -> said.add(each.at() + " " + each.rule() + ": " + each.message()));
    return said;
  }
}
