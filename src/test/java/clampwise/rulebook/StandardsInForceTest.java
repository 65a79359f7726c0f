package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.facts.BaseJob;
import clampwise.finding.Basis;
import clampwise.finding.Finding;
import clampwise.job.ElectricalCode;
import clampwise.job.Site.LoadCode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Findings cite the standard of their site. */
class StandardsInForceTest {

  private static final String ZONES = "claims: {zone-width: 1 ft}";
  private static final Rulebook RULES = Rulebook.builtIn();

  @Test
  void aZoneDrawnTooNarrowCitesTheStandardOfTheSite() {
    assertThat(cited("zone-width-claimed-too-small", "asce-7-16", ZONES))
        .containsExactly(Basis.of("asce-7-16", "chapter 30 figures"));
    assertThat(cited("zone-width-claimed-too-small", "asce-7-22", ZONES))
        .containsExactly(Basis.of("asce-7-22", "chapter 30 figures"));
    assertThat(cited("zone-width-claimed-too-small", "en-1991", ZONES))
        .containsExactly(Basis.of("en-1991-1-4", "figures 7.6 to 7.8"));
  }

  @Test
  void aLimitOfSeveralEditionsIsCitedOnceInTheOneOfTheSite() {
    assertThat(cited("array-too-high", "asce-7-22", "fields: {A: {top-height: 12 in}}"))
        .singleElement()
        .satisfies(basis -> assertThat(basis.key()).isEqualTo("asce-7-22"))
        .satisfies(basis -> assertThat(basis.obtained()).isEqualTo("read"));
  }

  @Test
  void whatIsNoLoadStandardHoldsEverywhere() {
    assertThat(holds(LoadCode.EN_1991, "practice")).isTrue();
    assertThat(holds(LoadCode.ASCE_7_16, "part-sheet")).isTrue();
    assertThat(holds(LoadCode.EN_1991, "asce-7")).isFalse();
    assertThat(holds(LoadCode.ASCE_7_22, "en-1990")).isFalse();
    assertThat(holds(LoadCode.ASCE_7_22, "asce-7-16")).isFalse();
  }

  @Test
  void whereTheJobNamesNoStandardAllThatTheRuleNamesIsCited() {
    StandardsInForce unknown = new StandardsInForce(Optional.empty(), Optional.empty());
    Basis asce = Basis.of("asce-7", "29.4.4");
    assertThat(unknown.hold(asce)).isTrue();
    assertThat(unknown.inForce(asce)).isEqualTo(asce);
  }

  @Test
  void theElectricalCodeOfTheSiteIsCitedAloneWhereOneIsKnown() {
    StandardsInForce european =
        new StandardsInForce(Optional.empty(), Optional.of(ElectricalCode.IEC_62548));
    assertThat(european.hold(Basis.of("nec", "690.7"))).isFalse();
    assertThat(european.hold(Basis.of("iec-62548", ""))).isTrue();
    assertThat(holds(LoadCode.ASCE_7_22, "nec")).isTrue();
  }

  @Test
  void aRoofUnderTheEurocodesIsNotHeldToStandardsOfTheUnitedStates() {
    assertThat(holds(LoadCode.EN_1991, "nec")).isFalse();
    assertThat(holds(LoadCode.EN_1991, "ul-2703")).isFalse();
    assertThat(holds(LoadCode.EN_1991, "iec-62548")).isTrue();
    assertThat(holds(LoadCode.ASCE_7_16, "ul-2703")).isTrue();
    assertThat(
            cited(
                "combination-not-listed", "en-1991", "modules: {M30: {listed-with: [MC-1, EC-1]}}"))
        .containsExactly(Basis.of("module-manual", ""));
  }

  private static boolean holds(LoadCode code, String key) {
    return new StandardsInForce(Optional.of(code), Optional.empty()).hold(Basis.of(key, ""));
  }

  /** What the findings of a rule cite in the base job under a standard. */
  private static List<Basis> cited(String rule, String code, String over) {
    String yaml = "site: {codes: {loads: %s}}\n%s\n".formatted(code, over);
    return RULES.judge(BaseJob.with("seam-roof", yaml).facts()).findings().stream()
        .filter(finding -> finding.rule().equals(rule))
        .map(Finding::basis)
        .flatMap(List::stream)
        .distinct()
        .toList();
  }
}
