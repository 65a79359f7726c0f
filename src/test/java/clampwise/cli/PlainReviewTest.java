package clampwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainReviewTest {

  @Test
  void jobsAloneMeanTheSameAsTheyDoToTheParser() {
    String[] words = {"review", "a.yaml", "-"};
    ReviewOptions parsed = new Usage(Arguments.parse(words).subcommand()).review();
    assertThat(PlainReview.of(words)).contains(parsed);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"review", "review --help", "review a -h", "review a --lines", "explain a"})
  void anythingElseIsLeftToTheParser(String words) {
    assertThat(PlainReview.of(words.split(" "))).isEmpty();
  }
}
