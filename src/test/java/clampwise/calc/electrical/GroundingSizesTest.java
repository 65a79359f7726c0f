package clampwise.calc.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Recomputed;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.TablesReader;
import clampwise.units.Dimension;
import clampwise.units.QuantityPrint;
import clampwise.units.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class GroundingSizesTest {

  private static final GroundingSizes SIZES =
      new GroundingSizes(TablesReader.read("electrical.yaml").get("grounding-conductors"));

  /** The lookups that handbook table 2.1 lists, NEC table 250.122 [read]. */
  @ParameterizedTest
  @CsvSource({
    "15, 14 AWG",
    "16, 12 AWG",
    "20, 12 AWG",
    "21, 10 AWG",
    "60, 10 AWG",
    "61, 8 AWG",
    "100, 8 AWG",
    "101, 6 AWG",
    "200, 6 AWG",
    "201, 4 AWG"
  })
  void theNextRowUpOfNecTable250122Decides(double deviceA, String size) {
    assertThat(printed(deviceA, "copper")).isEqualTo(size);
  }

  /** Every row of handbook table 2.1, NEC table 250.122 [read]. */
  @ParameterizedTest
  @CsvSource({
    "15, 14 AWG, 12 AWG",
    "20, 12 AWG, 10 AWG",
    "60, 10 AWG, 8 AWG",
    "100, 8 AWG, 6 AWG",
    "200, 6 AWG, 4 AWG",
    "300, 4 AWG, 2 AWG",
    "400, 3 AWG, 1 AWG",
    "500, 2 AWG, 1/0 AWG",
    "600, 1 AWG, 2/0 AWG",
    "800, 1/0 AWG, 3/0 AWG",
    "1000, 2/0 AWG, 4/0 AWG",
    "1200, 3/0 AWG, 250 kcmil",
    "1600, 4/0 AWG, 350 kcmil",
    "2000, 250 kcmil, 400 kcmil",
    "2500, 350 kcmil, 600 kcmil",
    "3000, 400 kcmil, 600 kcmil",
    "4000, 500 kcmil, 750 kcmil",
    "5000, 700 kcmil, 1250 kcmil",
    "6000, 800 kcmil, 1250 kcmil"
  })
  void everyRowStandsAsInNecTable250122(double deviceA, String copper, String aluminium) {
    assertThat(printed(deviceA, "copper")).isEqualTo(copper);
    assertThat(printed(deviceA, "aluminium")).isEqualTo(aluminium);
  }

  @Test
  void theTableEndsAt6000Amperes() {
    assertThat(SIZES.least(6001, "copper", new Work(Measure.METRIC)))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  /** Handbook example 3.1 (d): Isc 13.9 A without a fuse is sized as for 21.7 A [computed]. */
  @ParameterizedTest
  @EnumSource
  void withoutADeviceTheShortCircuitCurrentIsRaisedTwice(Measure measure) {
    Work work = new Work(measure);
    Term isc = new Term("I_sc", "short-circuit current", 13.9, Dimension.CURRENT);
    double deviceA = GroundingSizes.assumedDevice(isc, 1.5625, Source.STATICS, work).si();
    assertThat(deviceA).isCloseTo(21.7, within(0.05));
    assertThat(printed(deviceA, "copper")).isEqualTo("10 AWG");
    Recomputed.check(work);
  }

  /** NEC 250.122(B) [second-hand]: in proportion to the areas, and never smaller. */
  @ParameterizedTest
  @EnumSource
  void theConductorIsRaisedInProportionToItsCircuit(Measure measure) {
    Work work = new Work(measure);
    Term size = GroundingSizes.wire("S", "grounding conductor", 5.26e-6);
    Term needed = GroundingSizes.wire("A_n", "needed", 13.3e-6);
    Term chosen = GroundingSizes.wire("A_c", "chosen", 26.6e-6);
    assertThat(GroundingSizes.raised(size, needed, chosen, work).si())
        .isCloseTo(10.52e-6, within(1e-12));
    assertThat(GroundingSizes.raised(size, chosen, needed, work).si()).isEqualTo(size.si());
    Recomputed.check(work);
  }

  /** Handbook example 3.1 (f): 100 ft of 6 AWG have 0.049 ohm [computed]. */
  @ParameterizedTest
  @EnumSource
  void aHundredFeetOfSixAwgHave49Milliohms(Measure measure) {
    Work work = new Work(measure);
    ConductorResistance copper =
        new ConductorResistance(TablesReader.read("electrical.yaml").get("conductors"));
    double sixM2 = 13.3e-6;
    Term length = Term.length("L", "length", 30.48);
    assertThat(copper.of(sixM2, length, work).result().orElseThrow().si())
        .isCloseTo(0.049, within(0.0005));
    Recomputed.check(work);
  }

  /** Handbook table 2.11: areas [computed] of the American wire gauge. */
  @Test
  void areasOfTheTableAreThoseOfTheGauge() {
    assertThat(TablesReader.read("electrical.yaml").get("conductors").rows())
        .allSatisfy(
            row ->
                assertThat(row.number("size"))
                    .isCloseTo(row.number("area"), within(row.number("area") * 3e-3)));
  }

  @Test
  void aLargerDeviceNeverHasASmallerConductor() {
    for (String metal : List.of("copper", "aluminium")) {
      double last = 0;
      for (var row : SIZES.table().rows()) {
        assertThat(row.number(metal)).isGreaterThanOrEqualTo(last);
        last = row.number(metal);
      }
    }
  }

  private static String printed(double deviceA, String metal) {
    Term size = SIZES.least(deviceA, metal, new Work(Measure.METRIC)).result().orElseThrow();
    return QuantityPrint.text(size.si(), Units.AWG);
  }
}
