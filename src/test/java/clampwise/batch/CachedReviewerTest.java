package clampwise.batch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import clampwise.repository.Scratch;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.source.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CachedReviewerTest {

  private static final Reviewer REVIEWER = new Reviewer();

  @TempDir private Path folder;
  private Path job = Path.of("");
  private Scratch scratch;

  @BeforeEach
  void aJobThatNamesFiles() throws IOException {
    Path depot = Path.of("examples/depot-surveyed");
    scratch = new Scratch(folder);
    for (String name : List.of("job.yaml", "seams.csv", "attachments.csv")) {
      scratch.file("depot/" + name, Files.readString(depot.resolve(name)));
    }
    job = folder.resolve("depot/job.yaml");
  }

  private Review review(Reviewer reviewer, String version) {
    ResultCache cache = new ResultCache(Optional.of(folder.resolve("cache")));
    return new CachedReviewer(reviewer, cache, version).review(job);
  }

  private Review review() {
    return review(new Reviewer(), "1");
  }

  private static byte[] bytes(Review review) {
    return new RecordCodec<>(Review.class).encode(review);
  }

  private long entries() throws IOException {
    Path cache = folder.resolve("cache");
    if (!Files.exists(cache)) {
      return 0;
    }
    try (Stream<Path> all = Files.walk(cache)) {
      return all.filter(Files::isRegularFile).count();
    }
  }

  /** Puts a mark on what is kept, so that a review from the cache can be told. */
  private void mark() throws IOException {
    ResultCache cache = new ResultCache(Optional.of(folder.resolve("cache")));
    try (Stream<Path> all = Files.walk(folder.resolve("cache"))) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String key = String.valueOf(file.getFileName());
        String kept = new String(cache.get(key).orElseThrow(), UTF_8);
        assertThat(kept).containsAnyOf("Parcel", "Kept!");
        cache.put(key, kept.replace("Parcel", "Kept!").getBytes(UTF_8));
      }
    }
  }

  private boolean isFromCache(Review review) {
    return review.title().contains("Kept!");
  }

  @Test
  void theSecondReviewComesFromTheCacheAndIsTheSame() throws IOException {
    byte[] plain = bytes(REVIEWER.review(job));
    assertThat(bytes(review())).isEqualTo(plain);
    assertThat(bytes(review())).isEqualTo(plain);
    mark();
    assertThat(isFromCache(review())).isTrue();
  }

  @Test
  void anyChangeOfWhatTheReviewRestsOnIsANewReview() throws IOException {
    review();
    mark();
    assertThat(isFromCache(review(new Reviewer(), "2"))).isFalse();
    String text = Files.readString(job);
    Files.writeString(job, text + "# a remark\n");
    assertThat(isFromCache(review())).isFalse();
    Files.writeString(job, text);
    assertThat(isFromCache(review())).isTrue();
    for (String beside : List.of("depot/seams.csv", "depot/attachments.csv")) {
      String was = Files.readString(folder.resolve(beside));
      scratch.file(beside, was + "\n");
      assertThat(isFromCache(review())).as(beside).isFalse();
      scratch.file(beside, was);
      review();
      mark();
    }
  }

  @Test
  void aPolicyAboveTheJobIsPartOfTheKey() throws IOException {
    Files.createDirectories(folder.resolve(".git"));
    review();
    mark();
    scratch.file("clampwise-policy.yaml", "fail-on: warning\n");
    Review strict = review();
    assertThat(isFromCache(strict)).isFalse();
    assertThat(strict.failOn()).isPresent();
    Files.delete(folder.resolve("clampwise-policy.yaml"));
    assertThat(isFromCache(review())).isTrue();
  }

  @Test
  void aReviewOfAMissingFileIsNotKeptAndSeesWhenItComes() throws IOException {
    String was = Files.readString(folder.resolve("depot/seams.csv"));
    Files.delete(folder.resolve("depot/seams.csv"));
    assertThat(review().problems()).isNotEmpty();
    assertThat(entries()).isZero();
    scratch.file("depot/seams.csv", was);
    assertThat(review().problems()).isEmpty();
    Files.delete(folder.resolve("depot/seams.csv"));
    assertThat(review().problems()).isNotEmpty();
  }

  @Test
  void aMissingJobIsSaidAndNotKept() throws IOException {
    Files.delete(job);
    assertThat(review().problems()).hasSize(1);
    assertThat(entries()).isZero();
  }

  @Test
  void whatIsKeptNamesTheVeryBytesThatWereReviewed() throws IOException {
    List<String> plain = digests(REVIEWER.review(job));
    assertThat(plain.get(0)).isEqualTo(Digests.of(Files.readAllBytes(job)));
    assertThat(digests(review())).isEqualTo(plain);
    assertThat(digests(review())).isEqualTo(plain);
  }

  private static List<String> digests(Review review) {
    return review.sources().stream().map(SourceText::sha256).toList();
  }

  @Test
  void keptReviewsHoldNoFacts() {
    assertThat(review().facts()).isEmpty();
    assertThat(Arrays.equals(bytes(review()), bytes(REVIEWER.review(job)))).isTrue();
  }
}
