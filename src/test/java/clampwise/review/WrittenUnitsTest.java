package clampwise.review;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Finding;
import clampwise.source.SourceFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each length of a message stands in the unit in which it was written. */
class WrittenUnitsTest {

  @Test
  void aDeviationInMillimetresStandsOverALengthInMetres() throws IOException {
    assertThat(messages("set-out-from: seams", "set-out-from: eave", "offset: 10", "offset: 40"))
        .containsExactly(
            "field A is set out from the eave, which runs off square by 40 mm over 12 m; at most"
                + " 24 mm");
  }

  @Test
  void aFrameInInchesIsAlsoPrintedInTheUnitOfTheClampsRange() throws IOException {
    assertThat(messages("frame-height: 30 mm", "frame-height: 1 3/8 in"))
        .contains(
            "mid clamp MC-1 grips 28 mm to 33 mm; the frame of A.R1C1 (M30) is 1 3/8 in (34.9 mm)");
  }

  @Test
  void aClampsRangeInInchesStandsBesideASeamInMillimetres() throws IOException {
    assertThat(messages("height: 2 in\n", "height: 20 mm\n"))
        .containsExactly("SC-1 fits a seam height of 1 in to 3 in; steel seams has 20 mm");
  }

  /** 32 modules of 21.5 kg and a pallet of 40 kg on a pallet's own 1.722 m x 1.134 m [computed]. */
  @Test
  void aPalletOnARoofInFeetIsWeighedInPoundsAndSpreadOverSquareFeet() throws IOException {
    String staged =
        """
          members-checked: yes
          roof-design-load: 20 psf
        takeoff:
          modules-per-pallet: 12
          staging: {on: frames}
        """;

    assertThat(messages("  members-checked: yes\n", staged))
        .singleElement()
        .asString()
        .startsWith("a pallet of 12 modules, ")
        .contains(" lb, on 21 ft² is ", "; the roof was designed for 20 psf");
  }

  @Test
  void timesOfWorkAreReadInHoursWhereTheyAreLong() throws IOException {
    String quoted = "takeoff:\n  crew-time: {total: 30 min}\nclaims:\n";

    assertThat(messages("claims:\n", quoted))
        .containsExactly(
            "the quotation gives the crew 30 min; laying 12 modules alone takes 18 min, all phases"
                + " some 6.3 h");
  }

  private static List<String> messages(String... replacements) throws IOException {
    String text = Files.readString(Path.of("rules/base/seam-roof.yaml"));
    for (int i = 0; i < replacements.length; i += 2) {
      assertThat(text).contains(replacements[i]);
      text = text.replace(replacements[i], replacements[i + 1]);
    }
    byte[] job = text.getBytes(StandardCharsets.UTF_8);
    return new Reviewer()
        .review("job.yaml", job, SourceFiles.none()).findings().stream()
            .map(Finding::message)
            .toList();
  }
}
