package clampwise.facts.survey;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.facts.Derivation;
import clampwise.facts.Facts;
import clampwise.facts.Missing;
import clampwise.job.JobReader;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What was measured on the roof, against numbers worked out by hand. */
class SurveyFactsTest {
  private static final String SEAMS = "seams: {first: 8 in}";
  private static final String SET_OUT = "set-out-from: seams";
  private static final String EAVE = "eave-out-of-square: {offset: 10 mm, over: 12 m}";

  @Test
  void anEave40MillimetresOffIn12MetresIsHeldAgainst24() throws IOException {
    // 1 in 500 (common practice, no source) of 12 m is 24 mm [computed].
    List<ReferenceLine> lines =
        found(
            ReferenceLine.class,
            read(SET_OUT, "set-out-from: eave", EAVE, EAVE.replace("10 mm", "40 mm")));

    assertThat(lines).hasSize(1);
    assertThat(lines.get(0).offsetM()).isEqualTo(0.040);
    assertThat(lines.get(0).mostM()).isEqualTo(0.024);
  }

  @Test
  void aFieldSetOutFromTheSeamsIsNotAskedAboutTheEave() throws IOException {
    Facts facts = read();

    assertThat(found(ReferenceLine.class, facts)).isEmpty();
    assertThat(missing(ReferenceLine.class, facts)).isEmpty();
  }

  @Test
  void anEaveThatNobodyMeasuredIsNotChecked() throws IOException {
    Facts facts = read(SET_OUT, "set-out-from: eave", EAVE, "");

    assertThat(found(ReferenceLine.class, facts)).isEmpty();
    assertThat(missing(ReferenceLine.class, facts))
        .containsExactly("nobody has measured how square the eave is to the seams");
  }

  @Test
  void theFarthestSeamUnderTheFieldCounts() throws IOException {
    // Drawn at 6299.2 mm and every 406.4 mm: the fourth at 7518.4 mm, measured 8 mm to its left.
    String surveyed = "seams: {first: 6299.2 mm, surveyed: [6300 mm, 6709 mm, 7112 mm, 7510.4 mm]}";
    List<SeamDrift> drifts = found(SeamDrift.class, read(SEAMS, surveyed));

    assertThat(drifts).extracting(SeamDrift::seam).containsExactly(4);
    assertThat(drifts).extracting(SeamDrift::driftM).containsExactly(0.008);
    assertThat(drifts).extracting(SeamDrift::mostM).containsExactly(0.010);
  }

  @Test
  void aClampNearTheEndOfItsZoneBearsLess() throws IOException {
    // The clamp on the fourth seam is drawn 7818 - 7518.4 = 299.6 mm from the right corner of the
    // leftmost module; a zone up to 305 mm leaves it 5.4 mm.
    String surveyed = "seams: {first: 6299.2 mm, surveyed: [6300 mm, 6705 mm, 7112 mm, 7518 mm]}";
    Facts facts = read(SEAMS, surveyed, "0 mm to 430 mm", "0 mm to 305 mm");

    assertThat(found(SeamDrift.class, facts)).extracting(SeamDrift::mostM).containsExactly(0.0054);
  }

  @Test
  void nominalSeamsAreNotChecked() throws IOException {
    Facts facts = read();

    assertThat(found(SeamDrift.class, facts)).isEmpty();
    assertThat(missing(SeamDrift.class, facts))
        .containsExactly("the seams of plane south are nominal; nobody has measured them");
  }

  @Test
  void whatIsAssumedIsNotConfirmed() throws IOException {
    String metal = "    metal: steel\n    thickness";
    List<AssumedFact> facts =
        found(AssumedFact.class, read(metal, "    assumed: [thickness, clips]\n" + metal));

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

  private static Facts read(String... replacements) throws IOException {
    String text = Files.readString(Path.of("rules/base/seam-roof.yaml"));
    for (int i = 0; i < replacements.length; i += 2) {
      assertThat(text).contains(replacements[i]);
      text = text.replace(replacements[i], replacements[i + 1]);
    }
    Problems problems = new Problems();
    Facts facts =
        YamlReader.read("job.yaml", text, problems)
            .flatMap(tree -> JobReader.read("job.yaml", tree, problems))
            .map(job -> Derivation.of(job, CatalogueReader.empty(), LimitsReader.read(), problems))
            .orElseThrow();
    assertThat(problems.isEmpty()).isTrue();
    return facts;
  }

  private static <T> List<T> found(Class<T> type, Facts facts) {
    return facts.facts().stream().filter(type::isInstance).map(type::cast).toList();
  }

  private static List<String> missing(Class<?> type, Facts facts) {
    return facts.missing().stream()
        .filter(missing -> missing.question() == type)
        .map(Missing::reason)
        .toList();
  }
}
