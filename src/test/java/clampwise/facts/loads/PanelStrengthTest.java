package clampwise.facts.loads;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a clip may take, in the limit state of the site's standard. */
class PanelStrengthTest {

  @Test
  void anAllowableStrengthOfClipsIsRefusedInTheWordsOfTheEurocode() {
    EurocodeJobs job =
        EurocodeJobs.flat(
            "height: 32, substrate",
            "height: 32, clips: floating,"
                + " clip-strength: {force: 2 kN, loads-are: allowable}, substrate",
            "    seams: {first: 200}",
            "    seams: {first: 200}\n    purlins: {first: 0 m, spacing: 2 m}");
    assertThat(job.missing(ClipUse.class))
        .containsExactly(
            "the strength of the clips of sheet: an allowable load may not be held against design"
                + " values of EN 1990");
  }
}
