package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlaceNamesTest {

  @Test
  void namesInARowAreARange() {
    assertThat(lines("roof / B2", "roof / B4", "roof / B5", "roof / B6", "roof / B9", "roof / B10"))
        .containsExactly("roof / B2, B4-B6, B9, B10");
  }

  @Test
  void rowsWithTheSameColumnsAreABlock() {
    List<String> paths = new ArrayList<>();
    for (int row = 2; row <= 4; row++) {
      for (int column : List.of(1, 2, 7)) {
        paths.add("fields.A / module R" + row + "C" + column);
      }
    }
    paths.add("fields.A / module R5C1");
    assertThat(PlaceNames.lines(paths))
        .containsExactly("fields.A / module R2C1-R4C2, R2C7-R4C7, R5C1");
  }

  @Test
  void placesOfOtherKindsStandInLinesOfTheirOwn() {
    assertThat(lines("fields.A / line L2 seam 3", "fields.B / module R1C1 / gutter", "claims"))
        .containsExactly("fields.A / line L2 seam 3", "fields.B / module R1C1 / gutter", "claims");
  }

  @Test
  void wordsOfOneThingStandTogether() {
    assertThat(lines("documents / package / parts list", "documents / package / string map"))
        .containsExactly("documents / package / parts list, string map");
  }

  @Test
  void namesThatHoldAHyphenOrAZeroAreNoRange() {
    assertThat(lines("parts / MC-30", "parts / MC-31", "parts / MC-32", "parts / MC-040"))
        .containsExactly("parts / MC-040, MC-30, MC-31, MC-32");
  }

  @Test
  void aFloodIsCounted() {
    List<String> paths = IntStream.range(1, 101).mapToObj(i -> "roof / seam " + 2 * i).toList();
    assertThat(PlaceNames.lines(paths)).hasSize(2).last().isEqualTo("and 70 more");
  }

  @Test
  void numbersTooLongToCountWithAreNames() {
    assertThat(lines("seam 12345678901", "seam 12345678902"))
        .containsExactly("seam 12345678901, seam 12345678902");
  }

  private static List<String> lines(String... paths) {
    return PlaceNames.lines(List.of(paths));
  }
}
