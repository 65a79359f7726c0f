package clampwise.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What is said of a text that is no quantity. */
class FaultsTest {

  @Test
  void aMistypedUnitNamesTheNearestOne() {
    assertThat(fault("22 fet", Dimension.LENGTH).expected()).endsWith("the nearest unit is ft");
    assertThat(fault("22 milimetr", Dimension.LENGTH).expected()).endsWith("nearest unit is mm");
    assertThat(fault("30 pfs", Dimension.PRESSURE).expected()).endsWith("the nearest unit is psf");
    assertThat(fault("3 ft 6 inx", Dimension.LENGTH).expected()).endsWith("nearest unit is in");
  }

  @Test
  void aLetterChangedIsNearerThanALetterTooMany() {
    assertThat(fault("3 ln", Dimension.FORCE).expected()).endsWith("the nearest unit is kN");
  }

  @Test
  void aWordLikeNoUnitNamesNone() {
    assertThat(fault("22 zz", Dimension.LENGTH).expected()).doesNotContain("nearest");
    assertThat(fault("22 bananas", Dimension.LENGTH).expected()).doesNotContain("nearest");
  }

  @Test
  void aUnitOfAnotherKindIsNamed() {
    assertThat(fault("30 psf", Dimension.LENGTH).found())
        .isEqualTo("\"30 psf\", which is a pressure");
  }

  @Test
  void anEmptyTextIsCalledNothing() {
    assertThat(fault(" ", Dimension.LENGTH).found()).isEqualTo("nothing");
    assertThat(fault("abc", Dimension.LENGTH).found()).isEqualTo("\"abc\"");
  }

  @Test
  void aLongTextIsCutAfterFortyCharacters() {
    assertThat(fault("x".repeat(40), Dimension.LENGTH).found())
        .isEqualTo("\"" + "x".repeat(40) + "\"");
    assertThat(fault("x".repeat(41), Dimension.LENGTH).found())
        .isEqualTo("\"" + "x".repeat(40) + "...\"");
  }

  @Test
  void endlessDigitsAreAFault() {
    assertThat(fault("9".repeat(5000) + " m", Dimension.LENGTH).found()).hasSizeLessThan(60);
  }

  @Test
  void thirtyDigitsAreANumberAndThirtyOneAreNot() {
    assertThat(si("0".repeat(28) + "22 m")).isEqualTo(22);
    assertThat(si("1/" + "0".repeat(29) + "2 m")).isEqualTo(0.5);
    assertThat(fault("0".repeat(29) + "22 m", Dimension.LENGTH).expected()).contains("such as");
    assertThat(fault("1/" + "0".repeat(30) + "2 m", Dimension.LENGTH).expected())
        .contains("such as");
  }

  /** What a message offers as an example can be written. */
  @ParameterizedTest
  @EnumSource(Dimension.class)
  void everyExampleInAMessageReadsAsAQuantityOfItsKind(Dimension dimension) {
    String examples = fault("abc", dimension).expected().replaceFirst(".* such as ", "");
    for (String example : examples.split("(, | or )")) {
      assertThat(QuantityText.parse(example, dimension, Optional.empty()))
          .as(example)
          .isInstanceOf(Parsed.Value.class);
    }
  }

  /** The distance of Levenshtein, but for swapped letters, which are one slip. */
  @ParameterizedTest
  @CsvSource({"psf, psf, 0", "psf, pfs, 1", "kitten, sitting, 3", "in, inch, 2", "foot, ft, 2"})
  void theDistanceOfWordsCountsLettersToChange(String a, String b, int distance) {
    assertThat(Spelling.distance(a, b)).isEqualTo(distance);
    assertThat(Spelling.distance(b, a)).isEqualTo(distance);
  }

  private static double si(String text) {
    return ((Parsed.Value) QuantityText.parse(text, Dimension.LENGTH, Optional.empty())).si();
  }

  private static Parsed.Fault fault(String text, Dimension dimension) {
    return (Parsed.Fault) QuantityText.parse(text, dimension, Optional.empty());
  }
}
