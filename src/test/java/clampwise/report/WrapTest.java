package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WrapTest {

  @Test
  void wordsThatFitShareALine() {
    assertThat(Wrap.lines("one two three", 8)).containsExactly("one two", "three");
  }

  @Test
  void aNumberStaysWithItsUnit() {
    assertThat(Wrap.lines("the rated zone is 234 mm", 21))
        .containsExactly("the rated zone is", "234 mm");
  }

  @Test
  void bracketsBehindAUnitDoNotPartItFromItsNumber() {
    assertThat(Wrap.lines("cold (by -0.27 %/°C), above", 15))
        .containsExactly("cold (by", "-0.27 %/°C),", "above");
  }

  @Test
  void feetInchesAndFractionsStayTogether() {
    assertThat(Wrap.lines("at 31 ft 7 1/2 in here", 15))
        .containsExactly("at", "31 ft 7 1/2 in", "here");
  }

  @Test
  void aWordLongerThanALineIsBroken() {
    assertThat(Wrap.lines("abcdefgh ij", 3)).containsExactly("abc", "def", "gh", "ij");
  }

  @Test
  void anEmptyTextIsOneEmptyLine() {
    assertThat(Wrap.lines("", 10)).containsExactly("");
  }

  @Test
  void wideCharactersCountTwice() {
    assertThat(Columns.of("屋根")).isEqualTo(4);
    assertThat(Columns.of("e\u0301")).isEqualTo(1);
    assertThat(Wrap.lines("屋根屋根", 4)).containsExactly("屋根", "屋根");
  }
}
