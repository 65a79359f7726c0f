package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemplateTest {

  private static final Template TEXT =
      Template.of("{count} {count:clamp holds/clamps hold} {module|nothing}{count:/, together}");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|0 clamps hold nothing, together",
        "1|1 clamp holds nothing",
        "2|2 clamps hold nothing, together",
        "11|11 clamps hold nothing, together"
      })
  void oneAndManyAreSaidAsPeopleSayThem(String count, String said) {
    assertThat(TEXT.fill(name -> Optional.ofNullable(Map.of("count", count).get(name))))
        .isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource({
    "eave,ends at an eave of an eave",
    "rake,ends at a rake of a rake",
    "8 ft,ends at an 8 ft of an 8 ft",
    "unit,ends at a unit of a unit"
  })
  void anArticleFollowsTheWordThatFillsThePlace(String word, String said) {
    Template text = Template.of("ends at a {edge} of an {edge}");
    assertThat(text.fill(name -> Optional.of(word))).isEqualTo(said);
  }

  @Test
  void aWordThatEndsLikeAnArticleIsNone() {
    Template text = Template.of("area {edge}, than {edge}, zone a{edge}");
    assertThat(text.fill(name -> Optional.of("eave")))
        .isEqualTo("area eave, than eave, zone aeave");
  }

  @Test
  void allPlaceholdersAreNamed() {
    assertThat(TEXT.names()).containsOnly("count", "module");
  }
}
