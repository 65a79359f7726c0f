package clampwise.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

  private static final List<String> KEYS =
      List.of("frame-height", "gap", "mid-clamp", "end-clamp", "plane", "panel");

  @ParameterizedTest
  @CsvSource({
    "frame-hieght, frame-height",
    "frame_height, frame-height",
    "Frame Height, frame-height",
    "gpa, gap",
    "midclamp, mid-clamp",
    "plan, plane",
    "pannel, panel",
    "height, frame-height",
    "my-end-clamp, end-clamp"
  })
  void slipsOfTheFingerFindTheirKey(String written, String key) {
    assertThat(Nearest.to(written, KEYS)).contains(key);
  }

  @ParameterizedTest
  @CsvSource({"1, I", "2, II", "3, III", "4, IV"})
  void aDigitIsNearestToItsRomanNumeral(String written, String category) {
    assertThat(Nearest.to(written, List.of("I", "II", "III", "IV"))).contains(category);
    assertThat(Nearest.to(written, List.of("C1", "C2", "C3", "C4"))).contains("C" + written);
  }

  @ParameterizedTest
  @CsvSource({"torque", "x", "''", "clamp"})
  void aWordThatIsFarFromAllFindsNone(String written) {
    assertThat(Nearest.to(written, KEYS)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"E", "-x", "--x"})
  void aLetterIsNotNearToAnotherLetter(String written) {
    assertThat(Nearest.to(written, List.of("B", "C", "D", "-h", "-q"))).isEmpty();
  }

  @Test
  void distanceIsSymmetric() {
    for (String a : KEYS) {
      for (String b : KEYS) {
        assertThat(Nearest.distance(a, b, 99)).isEqualTo(Nearest.distance(b, a, 99));
      }
    }
  }
}
