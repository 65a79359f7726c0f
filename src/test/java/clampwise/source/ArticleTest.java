package clampwise.source;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ArticleTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "an end clamp",
        "a mid clamp",
        "an SC-A",
        "an MC-30",
        "a BJ-A",
        "a unit",
        "a usual load",
        "an upper row",
        "an hour",
        "a hip",
        "an 8 A device",
        "an 80 mm gap",
        "an 11 ft eave",
        "an 18 ga sheet",
        "a 15 A device",
        "a 110 mm leg",
        "a one-way path",
        "an ASCE zone",
        "a roof"
      })
  void anArticleIsSpokenWithItsWord(String spoken) {
    String word = spoken.substring(spoken.indexOf(' ') + 1);
    assertThat(Article.with(word)).isEqualTo(spoken);
  }

  @org.junit.jupiter.api.Test
  void nothingHasTheShorterOne() {
    assertThat(Article.of("")).isEqualTo("a");
  }
}
