package clampwise.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.job.Panel;
import clampwise.source.Problems;
import org.junit.jupiter.api.Test;

class FitsTest {

  private static final Catalogue CATALOGUE = CatalogueReader.read();

  @Test
  void aThirtyMillimetreFrameTakesTheClampsOfItsRange() {
    assertThat(ClampFits.mid(CATALOGUE, 0.030, true).names()).containsExactly("MC-30");
    assertThat(ClampFits.mid(CATALOGUE, 0.030, false).names()).containsExactly("MC-30", "MC-30P");
    assertThat(ClampFits.end(CATALOGUE, 0.030, true).names()).containsExactly("EC-30B");
  }

  @Test
  void bothEndsOfAClampsRangeFit() {
    assertThat(ClampFits.mid(CATALOGUE, 0.028, true).names()).containsExactly("MC-30");
    assertThat(ClampFits.mid(CATALOGUE, 0.033, true).names()).containsExactly("MC-35", "MC-30");
  }

  @Test
  void aFrameThatNoClampGripsNamesTheObstacle() {
    Fits fits = ClampFits.mid(CATALOGUE, 0.055, false);
    assertThat(fits.names()).isEmpty();
    assertThat(fits.obstacle()).contains("frame height");
  }

  @Test
  void theStrongestClampOfADoubleLockSeamComesFirst() {
    Fits fits =
        roof(
            "{kind: standing-seam, profile: double-lock, metal: steel, thickness: 24 ga,"
                + " height: 2 in, substrate: open-purlins}");
    assertThat(fits.names()).containsExactly("SC-F", "SC-A");
    assertThat(fits.obstacle()).isEmpty();
  }

  @Test
  void aGaugeIsComparedAsThicknessOfItsMetal() {
    assertThat(
            roof("{kind: standing-seam, profile: double-lock, metal: steel, thickness: 26 ga,"
                    + " substrate: solid-deck}")
                .names())
        .containsExactly("SC-A");
  }

  @Test
  void theFirstPropertyThatNoPartMeetsIsTheObstacle() {
    assertThat(roof("{kind: standing-seam, profile: tongue}").obstacle()).contains("profile");
    assertThat(roof("{kind: standing-seam, profile: snap-lock, metal: zinc}").obstacle())
        .contains("metal");
    assertThat(
            roof("{kind: standing-seam, profile: snap-lock, metal: steel, thickness: 29 ga}")
                .obstacle())
        .contains("thickness");
    assertThat(
            roof("{kind: standing-seam, profile: snap-lock, metal: steel, substrate: open-purlins}")
                .obstacle())
        .contains("substrate");
  }

  @Test
  void aFloatingPanelIsNotScrewedToItsPurlins() {
    assertThat(roof("{kind: trapezoidal, profile: trapezoid-32, clips: floating}").names())
        .containsExactly("RB-A");
    assertThat(roof("{kind: trapezoidal, profile: trapezoid-32}").names())
        .containsExactly("RB-P", "RB-A");
  }

  @Test
  void whatIsNotKnownOfTheCoveringExcludesNothing() {
    assertThat(roof("{kind: standing-seam}").names()).hasSize(6);
  }

  private static Fits roof(String panel) {
    Problems problems = new Problems();
    String text = "job: roof\npanels:\n  P: " + panel + "\n";
    Job job = JobReader.read("job.yaml", text, problems).orElseThrow();
    Panel covering = job.panels().find("P").orElseThrow();
    return AttachmentFits.of(CATALOGUE, covering);
  }
}
