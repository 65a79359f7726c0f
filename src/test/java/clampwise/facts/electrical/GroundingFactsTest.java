package clampwise.facts.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import clampwise.units.QuantityPrint;
import clampwise.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grounding conductors, devices, lugs and jumpers of the wired roof. */
class GroundingFactsTest {

  /** Handbook examples 3.1 (a) to (c) and boundaries of 3.12, NEC table 250.122 [read]. */
  @ParameterizedTest
  @CsvSource({
    "15 A, copper, 14 AWG",
    "40 A, copper, 10 AWG",
    "20 A, copper, 12 AWG",
    "60 A, copper, 10 AWG",
    "61 A, copper, 8 AWG",
    "70 A, copper, 8 AWG",
    "70 A, aluminium, 6 AWG",
    "100 A, copper, 8 AWG",
    "101 A, copper, 6 AWG"
  })
  void theDeviceDecidesTheSizeAsInHandbookExample31(String device, String metal, String size) {
    String over =
        """
        electrical:
          circuits:
            ac: ~
            dc: {overcurrent: %s, conductor: 2 AWG, grounding: {size: 2 AWG, metal: %s}}
        """;
    GroundingSize fact = job(over.formatted(device, metal)).only(GroundingSize.class);

    assertThat(QuantityPrint.text(fact.leastWireM2(), Units.AWG)).isEqualTo(size);
  }

  /** Handbook example 3.1 (d): no fuse, 1.5625 times 13.9 A is 21.7 A, 10 AWG [computed]. */
  @Test
  void withoutAFuseTheShortCircuitCurrentDecides() {
    String over =
        """
        modules: {M30: {electrical: {isc: 13.9 A}}}
        electrical:
          circuits: {ac: ~, dc: {overcurrent: ~, fused: no}}
        """;
    BaseJob job = job(over);

    assertThat(job.only(UnfusedCircuit.class).leastA()).isCloseTo(21.7, within(0.05));
    assertThat(QuantityPrint.text(job.only(GroundingSize.class).leastWireM2(), Units.AWG))
        .isEqualTo("10 AWG");
    assertThat(job.only(GroundingSize.class).by())
        .isEqualTo("the 21.7 A assumed for a circuit without a device");
  }

  /** Handbook example 3.1 (e): exposed on the roof 6 AWG, whatever the table says [memory]. */
  @Test
  void whatIsTooSmallAndExposedIsToldTheSizeForBothAtOnce() {
    BaseJob job =
        job("electrical: {circuits: {ac: ~, dc: {overcurrent: 20 A, grounding: {size: 14 AWG}}}}");

    assertThat(job.only(GroundingSize.class).fitting()).isEqualTo("6 AWG");
    assertThat(job.facts(GroundingExposure.class)).isEmpty();
  }

  /** Job map part 6: 6 mm², 16 mm² with lightning current [2nd]; AS/NZS 4 mm² [memory]. */
  @ParameterizedTest
  @CsvSource({
    "iec-62548, no, 6",
    "iec-62548, yes, 16",
    "bs-7671, no, 6",
    "bs-7671, yes, 16",
    "as-nzs-5033, no, 4"
  })
  void otherCodesAskForTheSizeOfABond(String code, String lightning, double leastMm2) {
    BaseJob job = bond(code, "lightning-current: " + lightning, "10 mm²");

    assertThat(job.only(GroundingSize.class).leastWireM2() * 1e6).isCloseTo(leastMm2, within(1e-9));
    assertThat(job.facts(GroundingExposure.class)).isEmpty();
  }

  @Test
  void withoutAWordOnLightningOnlyTheClearCasesAreJudged() {
    assertThat(bond("iec-62548", "lightning-current: ~", "10 mm²").missing(GroundingSize.class))
        .containsExactly(
            "whether the bonding may carry lightning current is not given (electrical: lightning-current)");
    assertThat(bond("iec-62548", "lightning-current: ~", "4 mm²").only(GroundingSize.class))
        .matches(fact -> fact.sizeWireM2() < fact.leastWireM2());
    assertThat(bond("iec-62548", "lightning-current: ~", "16 mm²").only(GroundingSize.class))
        .matches(fact -> fact.sizeWireM2() >= fact.leastWireM2());
  }

  @Test
  void catalogueAreasCountAsTheGaugeTheyRound() {
    BaseJob job = job("electrical: {circuits: {ac: ~, dc: {grounding: {size: 13.3 mm²}}}}");

    assertThat(job.only(GroundingExposure.class))
        .matches(fact -> fact.sizeWireM2() == fact.leastWireM2());
  }

  @Test
  void aDeviceThatIsNotGivenLeavesTheConductorUnchecked() {
    String over = "electrical: {circuits: {ac: ~, dc: {overcurrent: ~}}}";

    assertThat(job(over).missing(GroundingSize.class))
        .containsExactly("the overcurrent device of circuit dc is not given (overcurrent)");
    assertThat(job(over).facts(GroundingSize.class)).isEmpty();
  }

  @Test
  void aConductorTooSmallForItsCircuitIsNotFoundAgainInItsLug() {
    BaseJob job =
        job("electrical: {circuits: {ac: ~, dc: {overcurrent: 60 A, grounding: {size: 12 AWG}}}}");

    assertThat(job.facts(LugWire.class)).isEmpty();
  }

  @Test
  void aLugThatDoesNotTakeTheConductorIsToldWhichDoes() {
    String over =
        """
        parts:
          lugs: {LG-2: {bonding: yes, wire-at-least: 4 AWG, wire-at-most: 1/0 AWG}}
        electrical: {circuits: {ac: ~, dc: {grounding: {size: 2 AWG}}}}
        """;

    assertThat(job(over).only(LugWire.class).fitting()).contains("LG-2");
  }

  @Test
  void theLargestFuseOfAllModulesCountsForBonds() {
    String over =
        """
        modules: {M40: {length: 1722 mm, width: 1134 mm, electrical: {series-fuse-at-most: 35 A}}}
        fields:
          B: {like: A, module: M40, block: {at: [60 ft, 8 ft], rows: 1, columns: 2}}
        """;

    assertThat(job(over).facts(BondFuse.class))
        .hasSize(3)
        .allMatch(fact -> fact.fuseA() == 35 && fact.module().equals("M40"));
  }

  /** NEC 2017 to 2023, clauses [2nd] and from memory as they stand beside each label. */
  @ParameterizedTest
  @CsvSource({"nec-2017, 690.56(C)", "nec-2020, 690.56(C)", "nec-2023, 690.12(D)"})
  void theShutdownLabelHasTheClauseOfItsEdition(String code, String clause) {
    BaseJob job = job("electrical: {code: %s}".formatted(code));

    assertThat(job.facts(LabelNeeded.class))
        .filteredOn(fact -> fact.label().equals("rapid shutdown"))
        .singleElement()
        .satisfies(fact -> assertThat(fact.limitFrom().orElseThrow().clause()).isEqualTo(clause));
  }

  /** 24 in since 2020, 4.5 ft and 12 in before [2nd]; larger cables 4.5 ft [memory]. */
  @ParameterizedTest
  @CsvSource({
    "nec-2017, 10 AWG, 54",
    "nec-2020, 10 AWG, 24",
    "nec-2020, 8 AWG, 24",
    "nec-2020, 6 AWG, 54",
    "nec-2023, 10 AWG, 24"
  })
  void supportsOfCablesGoByEditionAndSize(String code, String wire, double inches) {
    String over = "electrical: {code: %s, cables: {wire: %s}}".formatted(code, wire);

    assertThat(job(over).only(CableSupport.class).mostM()).isCloseTo(inches * 0.0254, within(1e-9));
  }

  private static BaseJob bond(String code, String lightning, String size) {
    String over =
        """
        electrical:
          code: %s
          %s
          circuits: {ac: ~, dc: {grounding: {size: %s}}}
        """;
    return job(over.formatted(code, lightning, size));
  }

  private static BaseJob job(String over) {
    return BaseJob.with("wired-roof", over);
  }
}
