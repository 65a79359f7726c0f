package clampwise.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.job.Panel;
import clampwise.source.Problems;
import clampwise.units.Unit;
import java.util.List;
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
    assertThat(fits.obstacle()).contains("the frame height, 55 mm");
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
    assertThat(roof("{kind: standing-seam, profile: tongue}").obstacle())
        .contains("the profile, tongue");
    assertThat(roof("{kind: standing-seam, profile: snap-lock, metal: zinc}").obstacle())
        .contains("the metal, zinc");
    assertThat(
            roof("{kind: standing-seam, profile: snap-lock, metal: steel, thickness: 29 ga}")
                .obstacle())
        .contains("the thickness, 29 ga");
    assertThat(
            roof("{kind: standing-seam, profile: snap-lock, metal: steel, substrate: open-purlins}")
                .obstacle())
        .contains("the substrate, open purlins");
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

  @Test
  void aRemedyNamesThreePartsOrSaysWhatKeepsAllFromFitting() {
    assertThat(ClampFits.mid(CATALOGUE, 0.030, true).told("another mid clamp")).isEqualTo("MC-30");
    assertThat(ClampFits.mid(CATALOGUE, 0.030, true).without("MC-30").told("another mid clamp"))
        .isEqualTo("another mid clamp (none that is known fits)");
    assertThat(ClampFits.end(CATALOGUE, 0.040, true).told("another end clamp"))
        .isEqualTo("another end clamp (none that is known fits: the obstacle is bonding)");
  }

  @Test
  void aMidClampSuitsTheGapBetweenTheRows() {
    ClampFits wide = ClampFits.in(CATALOGUE).gripping(0.046, Unit.MILLIMETRE).across(0.022);
    assertThat(wide.mid().names()).containsExactly("MC-46");
    assertThat(wide.across(0.023).mid().obstacle()).contains("the row gap");
  }

  @Test
  void aClampReachesFarEnoughOverTheFrameAndNotOverTheGlass() {
    assertThat(ClampFits.in(CATALOGUE).across(0.012).reaching(0.012, 0.012).mid().names())
        .contains("MC-30");
    assertThat(ClampFits.in(CATALOGUE).across(0.016).reaching(0.012, 0.013).mid().obstacle())
        .contains("how far it reaches over the frame");
    assertThat(ClampFits.in(CATALOGUE).reaching(0.005, 0.011).end().names()).isEmpty();
  }

  @Test
  void aListingThatLeavesNoneIsTheObstacle() {
    Fits fits = ClampFits.mid(CATALOGUE, 0.030, true);
    assertThat(fits.among(List.of("MC-30"), "the listing").names()).containsExactly("MC-30");
    assertThat(fits.among(List.of("MC-99"), "the listing").obstacle()).contains("the listing");
  }

  @Test
  void aWaveWithoutAFlatTakesNoFootThatNeedsOne() {
    assertThat(roof("{kind: corrugated}").names()).containsExactly("RB-A", "RB-C");
  }

  private static Fits roof(String panel) {
    Problems problems = new Problems();
    String text = "job: roof\npanels:\n  P: " + panel + "\n";
    Job job = JobReader.read("job.yaml", text, problems).orElseThrow();
    Panel covering = job.panels().find("P").orElseThrow();
    return AttachmentFits.of(CATALOGUE, covering);
  }
}
