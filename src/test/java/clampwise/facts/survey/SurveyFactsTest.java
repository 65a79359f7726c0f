package clampwise.facts.survey;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.facts.BaseJob;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What was measured on the roof, against numbers worked out by hand. */
class SurveyFactsTest {
  private static final String SEAMS = "seams: {first: 8 in}";
  private static final String SET_OUT = "set-out-from: seams";
  private static final String EAVE = "eave-out-of-square: {offset: 10 mm, over: 12 m}";

  @Test
  void anEave40MillimetresOffIn12MetresIsHeldAgainst24() {
    // 1 in 500 (common practice, no source) of 12 m is 24 mm [computed].
    List<ReferenceLine> lines =
        read(SET_OUT, "set-out-from: eave", EAVE, EAVE.replace("10 mm", "40 mm"))
            .facts(ReferenceLine.class);

    assertThat(lines).hasSize(1);
    assertThat(lines.get(0).offsetM()).isEqualTo(0.040);
    assertThat(lines.get(0).mostM()).isEqualTo(0.024);
  }

  @Test
  void aFieldSetOutFromTheSeamsIsNotAskedAboutTheEave() {
    BaseJob facts = read();

    assertThat(facts.facts(ReferenceLine.class)).isEmpty();
    assertThat(facts.missing(ReferenceLine.class)).isEmpty();
  }

  @Test
  void anEaveThatNobodyMeasuredIsNotChecked() {
    BaseJob facts = read(SET_OUT, "set-out-from: eave", EAVE, "");

    assertThat(facts.facts(ReferenceLine.class)).isEmpty();
    assertThat(facts.missing(ReferenceLine.class))
        .containsExactly(
            "nobody has measured how square the eave is to the panels (survey: eave-out-of-square)");
  }

  @Test
  void theFarthestSeamUnderTheFieldCounts() {
    // Drawn at 6299.2 mm and every 406.4 mm: the fourth at 7518.4 mm, measured 8 mm to its left.
    String surveyed = "seams: {first: 6299.2 mm, surveyed: [6300 mm, 6709 mm, 7112 mm, 7510.4 mm]}";
    List<SeamDrift> drifts = read(SEAMS, surveyed).facts(SeamDrift.class);

    assertThat(drifts).extracting(SeamDrift::seam).containsExactly("seam 4");
    assertThat(drifts).extracting(SeamDrift::driftM).containsExactly(0.008);
    assertThat(drifts).extracting(SeamDrift::mostM).containsExactly(0.010);
  }

  @Test
  void aClampNearTheEndOfItsZoneBearsLess() {
    // The clamp on the fourth seam is drawn 7818 - 7518.4 = 299.6 mm from the right corner of the
    // leftmost module; a zone up to 305 mm leaves it 5.4 mm.
    String surveyed = "seams: {first: 6299.2 mm, surveyed: [6300 mm, 6705 mm, 7112 mm, 7518 mm]}";
    BaseJob facts = read(SEAMS, surveyed, "0 mm to 430 mm", "0 mm to 305 mm");

    assertThat(facts.facts(SeamDrift.class)).extracting(SeamDrift::mostM).containsExactly(0.0054);
  }

  @Test
  void nominalSeamsAreNotChecked() {
    BaseJob facts = read();

    assertThat(facts.facts(SeamDrift.class)).isEmpty();
    assertThat(facts.missing(SeamDrift.class))
        .containsExactly(
            "the seams of plane south are nominal; nobody has measured them (seams: surveyed)");
  }

  @Test
  void whatIsAssumedIsNotConfirmed() {
    String metal = "    metal: steel\n    thickness";
    List<AssumedFact> facts =
        read(metal, "    assumed: [thickness, clips]\n" + metal).facts(AssumedFact.class);

    assertThat(facts)
        .filteredOn(fact -> !fact.confirmed())
        .extracting(AssumedFact::key)
        .containsExactly("thickness", "clips");
    assertThat(facts)
        .filteredOn(AssumedFact::confirmed)
        .extracting(AssumedFact::key)
        .containsExactly(
            "profile",
            "metal",
            "coating",
            "pitch",
            "height",
            "top-width",
            "fixed-point",
            "substrate");
  }

  private static BaseJob read(String... replacements) {
    return BaseJob.replacing("seam-roof", replacements);
  }
}
