package clampwise.review;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.NotChecked;
import clampwise.source.Problem;
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
  void aJobWithoutFieldsIsNoPass() {
    Review review = review("job: Empty\n");

    assertThat(review.problems()).isEmpty();
    assertThat(review.modules()).isZero();
    assertThat(review.coverage()).allMatch(rule -> rule.met() == 0 && rule.notMet() == 0);
    assertThat(review.notChecked())
        .filteredOn(each -> each.subject().path().equals("fields"))
        .hasSizeGreaterThan(40)
        .allMatch(each -> each.at().toString().equals("-:1:6"))
        .extracting(NotChecked::reason)
        .containsOnly("no module was reviewed: the job has no fields (fields)");
  }

  @Test
  void aFieldWithEveryModuleLeftOutIsAProblem() throws Exception {
    String text =
        Files.readString(BASE)
            .replaceFirst("rows: 3, columns: 4", "rows: 1, columns: 1, omit: [R1C1]");

    Review review = review(text.substring(0, text.indexOf("\nbonding:")));

    assertThat(review.problems())
        .extracting(Problem::found)
        .containsExactly("a field with every module left out");
    assertThat(review.modules()).isZero();
    assertThat(review.notChecked())
        .extracting(NotChecked::reason)
        .contains("no module was reviewed: no field could be read and laid out as written");
  }

  private Review review(String text) {
    return reviewer.review("-", text.getBytes(StandardCharsets.UTF_8), SourceFiles.none());
  }

  @Test
  void theSameJobGivesTheSameReview() {
    Path job = Path.of("examples/barn-junior/job.yaml");

    Review again = reviewer.review(job);
    Review first = new Reviewer().review(job);

    assertThat(first.findings()).hasToString(again.findings().toString());
    assertThat(first.notChecked()).isEqualTo(again.notChecked());
    assertThat(first.coverage()).isEqualTo(again.coverage());
  }
}
