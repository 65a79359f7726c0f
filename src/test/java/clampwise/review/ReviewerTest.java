package clampwise.review;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.source.SourceFiles;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ReviewerTest {
  private static final Path BASE = Path.of("rules/base/seam-roof.yaml");
  private final Reviewer reviewer = new Reviewer();

  @Test
  void aJobIsReviewedUnderTheNameGiven() {
    Review review = reviewer.review(BASE);

    assertThat(review.file()).isEqualTo("rules/base/seam-roof.yaml");
    assertThat(review.title()).isEqualTo("Seam roof");
    assertThat(review.problems()).isEmpty();
    assertThat(review.findings()).isEmpty();
  }

  @Test
  void aMissingFileIsAProblemAndNothingElse() {
    Review review = reviewer.review(Path.of("rules/base/seam-rof.yaml"));

    assertThat(review.problems()).hasSize(1);
    assertThat(review.problems().get(0).nearest()).contains("seam-roof.yaml");
    assertThat(review.coverage()).isEmpty();
  }

  @Test
  void whatCouldBeReadIsReviewed() throws Exception {
    String text = Files.readString(BASE).replace("  revision: A", "") + "\ncolour: red\n";

    Review review = reviewer.review("-", text.getBytes(StandardCharsets.UTF_8), SourceFiles.none());

    assertThat(review.problems()).hasSize(1);
    assertThat(review.title()).isEqualTo("Seam roof");
    assertThat(review.findings()).isEmpty();
  }

  @Test
  void theSameJobGivesTheSameReview() {
    Path job = Path.of("examples/barn-junior/job.yaml");

    assertThat(new Reviewer().review(job)).isEqualTo(reviewer.review(job));
  }
}
