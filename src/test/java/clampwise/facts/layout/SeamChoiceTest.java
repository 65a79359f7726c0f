package clampwise.facts.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which seams a number of clamps on each edge takes. */
class SeamChoiceTest {

  private static final double PITCH_M = 0.02;

  /**
   * a = s / 3 and 2 a + (n - 1) s = L = 1722 mm: s = L / (n - 1/3), so 1033.2 and 344.4 mm for two
   * clamps, 645.75 and 215.25 mm for three [computed].
   */
  @ParameterizedTest
  @CsvSource({"2, 0.3444", "3, 0.21525", "4, 0.15655"})
  void withoutAZoneTheOverhangIsAThirdOfTheSpan(int clamps, double overhangM) {
    List<Grip> grips = lowerEdge("clamp-zones: ~, overhang-at-most: ~", clamps);

    assertThat(grips).hasSize(clamps);
    assertThat(grips.get(0).fromLeftM()).isCloseTo(overhangM, within(PITCH_M));
    assertThat(grips.get(clamps - 1).fromLeftM()).isCloseTo(1.722 - overhangM, within(PITCH_M));
  }

  /** The middle of a zone of 430 mm would be at 215 mm. */
  @ParameterizedTest
  @CsvSource({"2", "3"})
  void noSeamBeyondTheOverhangOfTheManualIsTakenWhereThereIsAnother(int clamps) {
    List<Grip> grips = lowerEdge("overhang-at-most: 150 mm", clamps);

    assertThat(grips.get(0).fromCornerM()).isBetween(0.15 - PITCH_M, 0.15);
    assertThat(grips.get(clamps - 1).fromCornerM()).isBetween(0.15 - PITCH_M, 0.15);
  }

  @Test
  void whereNoSeamIsWithinTheOverhangOneInTheZoneIsTakenAndFound() {
    List<Grip> grips = lowerEdge("overhang-at-most: 1 mm", 2);

    assertThat(grips).hasSize(2).allMatch(grip -> grip.row().isPresent());
  }

  private static List<Grip> lowerEdge(String module, int clamps) {
    String over =
        """
        panels: {steel seams: {pitch: 20 mm}}
        modules: {M30: {%s}}
        fields: {A: {block: {rows: 1, columns: 1}, attach: {per-edge: %d}}}
        """;
    FieldLayout field =
        BaseJob.with("seam-roof", over.formatted(module, clamps)).layout().fields().get(0);
    return field.attachments().stream()
        .filter(attachment -> attachment.line() == 1)
        .flatMap(attachment -> attachment.grips().stream())
        .toList();
  }
}
