package clampwise.facts.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.units.Units;
import org.junit.jupiter.api.Test;

/** What the drawings state of loads, held against what is computed. */
class LoadClaimsTest {

  private static final String PRESSURES = "pressures: {field: {up: 34 psf, down: 16 psf}}\n";

  /**
   * wind-snow.md A-P2 [DER] with V 115, C, h 20: q_h = 25.8998 psf. A module of 21.02 ft²: GC_p =
   * -2 + 1.5 log10(21.02/20)/log10(5) = -1.9537, gamma_a = 1.2 - 0.4 log10(21.02) = 0.6709, gamma_E
   * = 1.5: 50.9 psf; worked out by hand.
   */
  @Test
  void theLargestPressureOfAZoneIsThatOfAnExposedModule() {
    assertThat(
            ClaimJobs.byTable("pressures-are: strength\n" + PRESSURES).facts(PressureClaim.class))
        .filteredOn(claim -> claim.direction().equals("uplift"))
        .singleElement()
        .satisfies(
            claim -> {
              assertThat(psf(claim.computedPa())).isCloseTo(50.93, within(0.05));
              assertThat(psf(claim.acceptablePa())).isCloseTo(49.9, within(1e-6));
              assertThat(psf(claim.minimumPa())).isCloseTo(16, within(1e-6));
            });
  }

  /** 0.6 W of the service combinations [LIB]: 0.6 x 50.93 = 30.56 psf, 0.6 x 16 = 9.6 psf. */
  @Test
  void pressuresOfServiceLevelAreHeldAgainstSixTenths() {
    assertThat(ClaimJobs.byTable("pressures-are: service\n" + PRESSURES).facts(PressureClaim.class))
        .allSatisfy(claim -> assertThat(psf(claim.minimumPa())).isCloseTo(9.6, within(1e-6)))
        .filteredOn(claim -> claim.direction().equals("uplift"))
        .singleElement()
        .satisfies(claim -> assertThat(psf(claim.computedPa())).isCloseTo(30.56, within(0.03)));
  }

  @Test
  void pressuresOfUnknownLevelAreNotChecked() {
    assertThat(ClaimJobs.claiming(PRESSURES).missing(PressureClaim.class))
        .containsExactly(
            "whether the stated pressures are of strength or service level is not given (claims: pressures-are)");
  }

  /** ASCE 7-16, 29.4.4 [MEM]: 20 ft to the rake, more than 0.5 h = 10 ft, nothing within 4 ft. */
  @Test
  void theModulesThatTakeTheEdgeFactorAreNamedWithTheReason() {
    assertThat(ClaimJobs.claiming("edge-factor: 1\n").facts(EdgeFactorClaim.class))
        .singleElement()
        .satisfies(
            claim -> {
              assertThat(claim.computed()).isEqualTo(1.5);
              assertThat(claim.modules()).startsWith("A.R1C1, ").contains(" more");
              assertThat(claim.why()).startsWith("exposed: the roof's edge is 20 ft away");
            });
  }

  @Test
  void anArrayTooHighHasNoEdgeFactorToCheckAndNoCredit() {
    String[] high = {"top-height: 115 mm", "top-height: 300 mm"};
    assertThat(ClaimJobs.claiming("edge-factor: 1\n", high).missing(EdgeFactorClaim.class))
        .singleElement()
        .asString()
        .contains("height of the panels above the roof");
    assertThat(
            ClaimJobs.claiming("equalisation-factor: 0.67\n", high).facts(EqualisationClaim.class))
        .singleElement()
        .satisfies(claim -> assertThat(claim.computed()).isEqualTo(1))
        .satisfies(claim -> assertThat(claim.from()).startsWith("no credit: "));
  }

  /** examples.md 3.8: gamma_a of a module of 21.0 ft² is 0.67 [computed]. */
  @Test
  void theEqualisationFactorIsThatOfOneModule() {
    assertThat(
            ClaimJobs.claiming("equalisation-factor: 0.4\nequalisation-area: 100 ft²\n")
                .facts(EqualisationClaim.class))
        .singleElement()
        .satisfies(claim -> assertThat(claim.computed()).isCloseTo(0.67, within(0.005)))
        .satisfies(claim -> assertThat(claim.readAt()).contains("100 ft²"));
  }

  /**
   * wind-snow.md A-N8, Cs table [DER]: 18.43 degrees (4:12 is 18.435), cold slippery 0.9376, other
   * surfaces 1.
   */
  @Test
  void theSlopeFactorIsThatOfAnArrayThatHoldsTheSnow() {
    assertThat(ClaimJobs.claiming("slope-factor: 0.94\n").facts(SlopeFactorClaim.class))
        .singleElement()
        .satisfies(claim -> assertThat(claim.computed()).isEqualTo(1))
        .satisfies(claim -> assertThat(claim.curve()).startsWith("that of bare metal"));
    assertThat(
            ClaimJobs.claiming(
                    "slope-factor: 0.94\n",
                    "simple-rafters: no",
                    "slides-off: yes, simple-rafters: no")
                .facts(SlopeFactorClaim.class))
        .singleElement()
        .satisfies(claim -> assertThat(claim.computed()).isCloseTo(0.9376, within(1e-4)));
  }

  /**
   * examples.md 3.5 [computed]: an inner line carries (1134 + 12) mm times its width, an edge line
   * half of 1134 mm; their ratio is 2.021 whatever the width.
   */
  @Test
  void anInnerLineCarriesHalfOfBothRowsAndTheGap() {
    var claims =
        ClaimJobs.claiming("tributary: {inner-line: 6.3 ft², edge-line: 3 ft²}\n")
            .facts(TributaryClaim.class);
    assertThat(claims).extracting(TributaryClaim::line).containsExactly("inner line", "edge line");
    double inner = claims.get(0).computedM2();
    double edge = claims.get(1).computedM2();
    assertThat(inner / edge).isCloseTo(1.397 / 0.691, within(0.001));
    assertThat(claims.get(0).part()).contains("half a row");
  }

  @Test
  void theLargestShareInUseIsThatOfAllFields() {
    assertThat(ClaimJobs.claiming("utilisation: 0.2\n").facts(UtilisationClaim.class))
        .singleElement()
        .satisfies(
            claim ->
                assertThat(claim.computed())
                    .isEqualTo(
                        ClaimJobs.with().facts(AttachmentUse.class).stream()
                            .mapToDouble(AttachmentUse::utilisation)
                            .max()
                            .orElseThrow()));
  }

  @Test
  void choicesOnTheMildSideAreTold() {
    assertThat(
            ClaimJobs.with(
                    "loads:\n",
                    "loads:\n  wind: {edge-factor: 1, exposed-edge: two-heights, hip-curve:"
                        + " to-100-sq-ft, wall-reduction: no}\n")
                .facts(StatedChoice.class))
        .filteredOn(StatedChoice::mild)
        .extracting(StatedChoice::key)
        .containsExactly("wind.exposed-edge", "wind.edge-factor", "wind.hip-curve");
  }

  @Test
  void withoutCreditTheConditionThatFailsIsTold() {
    assertThat(
            ClaimJobs.with("gap: 12 mm\n    top", "gap: 5 mm\n    top")
                .facts(EqualisationCredit.class))
        .singleElement()
        .satisfies(credit -> assertThat(credit.taken()).isFalse())
        .satisfies(credit -> assertThat(credit.why()).startsWith("the gap between panels is 0.19"));
    assertThat(ClaimJobs.with().facts(EqualisationCredit.class))
        .allSatisfy(credit -> assertThat(credit.taken()).isTrue());
  }

  @Test
  void claimsAboutLoadsThatAreNotKnownAreNotChecked() {
    ClaimJobs job =
        ClaimJobs.claiming(
            "edge-factor: 1\nslope-factor: 1\nutilisation: 0.9\n"
                + "tributary: {inner-line: 6.3 ft²}\n",
            "  codes: {loads: asce-7-16}\n",
            "");
    assertThat(job.missing(EdgeFactorClaim.class)).isNotEmpty();
    assertThat(job.missing(SlopeFactorClaim.class)).isNotEmpty();
    assertThat(job.missing(TributaryClaim.class)).isNotEmpty();
    assertThat(job.missing(UtilisationClaim.class))
        .containsExactly("no attachment's share of its strength could be computed");
  }

  private static double psf(double pa) {
    return Units.PSF.fromSi(pa);
  }
}
