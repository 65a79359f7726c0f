package clampwise.facts.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import org.junit.jupiter.api.Test;

/** Parts of the fields held against the coverings they sit on. */
class RoofPartsTest {

  private static final String FLOATING = "clips: through-fastened";

  @Test
  void aClampForAnotherFoldIsNotMadeForTheCovering() {
    BaseJob job = RoofJobs.seams("    profile: double-lock\n", "    profile: snap-lock\n");

    assertThat(job.facts(ProfileFit.class))
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.madeForIt()).isFalse();
              assertThat(fact.profile()).contains("snap-lock");
              assertThat(fact.fitting())
                  .contains(
                      "another seam clamp (none that is known fits:"
                          + " the obstacle is the profile, snap-lock)");
            });
  }

  @Test
  void whatIsMissingOfTheProfileIsSaid() {
    assertThat(RoofJobs.seams("    profile: double-lock\n", "").missing(ProfileFit.class))
        .containsExactly("the profile of steel seams is not given (profile)");
  }

  @Test
  void aSeamIsHeldAgainstHeightAndWidthOfTheClamp() {
    // 76.2 mm are the 3 in at which the clamp's range ends; 8 mm are nearer to 12 mm than to 3 mm.
    assertThat(RoofJobs.seams("height: 2 in\n", "height: 76.2 mm\n").facts(SeamSizeFit.class))
        .extracting(SeamSizeFit::dimension, SeamSizeFit::sizeM, SeamSizeFit::nearestBoundM)
        .containsExactly(tuple("seam height", 0.0762, 0.0762), tuple("seam width", 0.008, 0.012));
  }

  @Test
  void sizesThatAreNotGivenAreNotChecked() {
    assertThat(
            RoofJobs.seams("    top-width: 8 mm\n", "", "      seam-height: 1 in to 3 in\n", "")
                .missing(SeamSizeFit.class))
        .containsExactly(
            "the seam height that SC-1 fits is not given (seam-height)",
            "the seam width of steel seams is not given (top-width)");
  }

  @Test
  void aRibIsHeldAgainstHeightAndTopOfTheBracket() {
    assertThat(RoofJobs.ribs().facts(RibSizeFit.class))
        .extracting(RibSizeFit::dimension)
        .containsExactly("rib height", "rib top width");
  }

  @Test
  void aBracketOnAMinorRibIsAnsweredAsThatOnly() {
    // The first minor rib after the rib at 150 + 20 * 305 = 6250 mm lies at 6352 mm.
    BaseJob job =
        RoofJobs.ribs("attach: {per-edge: 2}", "attach: {points: [{at: [6352 mm, 2.5 m]}]}");

    assertThat(job.facts(RibOffset.class))
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.minorOffsetM()).isCloseTo(0, within(1e-9));
              assertThat(fact.structuralOffsetM()).isCloseTo(0.102, within(1e-9));
              assertThat(fact.ribAlongM()).isCloseTo(6.250, within(1e-9));
            });
    assertThat(job.facts(SeamOffset.class)).isEmpty();
  }

  /** 24 gauge steel is 0.0239 in nominal, 26 gauge 0.0179 in: handbook gauge table [2nd]. */
  @Test
  void theThinnestTestedSheetGovernsOverAThinnerDataSheet() {
    assertThat(RoofJobs.seams().facts(SheetFit.class))
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.leastFrom()).isEqualTo("its tests on this metal and substrate");
              assertThat(fact.thicknessM()).isEqualTo(fact.leastM());
              assertThat(fact.thicknessM()).isCloseTo(0.0239 * 0.0254, within(1e-5));
            });
  }

  @Test
  void practiceGivesTheThinnestSheetWhereNothingElseDoes() {
    String tested = "          thickness: 24 ga\n";
    String least = "      thickness-at-least: 26 ga\n";
    assertThat(RoofJobs.seams(tested, "", least, "").facts(SheetFit.class))
        .singleElement()
        .satisfies(fact -> assertThat(fact.limitFrom()).isPresent());
  }

  @Test
  void aMetalOrSubstrateOutsideTheTestsIsNotTested() {
    assertThat(
            RoofJobs.seams("    metal: steel\n    thick", "    metal: copper\n    thick")
                .facts(MetalTested.class))
        .extracting(MetalTested::tested)
        .containsExactly(false);
    assertThat(
            RoofJobs.seams("[solid-deck, open-purlins]", "[solid-deck]")
                .facts(SubstrateTested.class))
        .extracting(SubstrateTested::tested)
        .containsExactly(false);
  }

  @Test
  void aSubstrateThatIsNotGivenIsNotChecked() {
    assertThat(RoofJobs.seams("    substrate: open-purlins\n", "").missing(SubstrateTested.class))
        .containsExactly("what steel seams rests on is not given (substrate)");
  }

  @Test
  void loadsWithoutAWordOnWhatTheyAreAreNotStated() {
    assertThat(RoofJobs.seams("          loads-are: allowable\n", "").facts(LoadsStated.class))
        .singleElement()
        .satisfies(
            fact -> {
              assertThat(fact.loads()).isEqualTo("not stated");
              assertThat(fact.factorStated()).isTrue();
              assertThat(fact.gives())
                  .isEqualTo(
                      "does not say whether its loads are allowable or ultimate"
                          + " (it states a safety factor of 2.5)");
            });
  }

  @Test
  void eachScrewIntoAPurlinPinsTheRunOnceMore() {
    String purlins = "screws-into: purlin";
    assertThat(RoofJobs.ribs(FLOATING, "clips: floating").facts(FixedPoints.class))
        .extracting(FixedPoints::points)
        .containsExactly(1);
    assertThat(
            RoofJobs.ribs(FLOATING, "clips: floating", "screws-into: sheet", purlins)
                .facts(FixedPoints.class))
        .singleElement()
        .satisfies(fact -> assertThat(fact.points()).isGreaterThan(fact.most()));
    assertThat(
            RoofJobs.ribs("    " + FLOATING + "\n", "", "screws-into: sheet", purlins)
                .missing(FixedPoints.class))
        .containsExactly("whether steel ribs floats on its clips is not given (clips)");
  }

  @Test
  void aBracketThatBearsOnAFlatFindsNoneOnACrest() {
    BaseJob flat = RoofJobs.crests("bears-on: saddle", "bears-on: flat");

    assertThat(RoofJobs.crests().facts(FlatBearing.class))
        .allSatisfy(fact -> assertThat(fact.neededM()).isZero());
    assertThat(flat.facts(FlatBearing.class))
        .singleElement()
        .satisfies(fact -> assertThat(fact.neededM()).isGreaterThan(fact.flatM()));
    assertThat(RoofJobs.crests("      bears-on: saddle\n", "").missing(FlatBearing.class))
        .containsExactly("what RB-1 bears on is not given (bears-on)");
  }

  @Test
  void aFieldWithoutPartIsNotChecked() {
    assertThat(RoofJobs.seams("    attachment: SC-1\n", "").missing(ProfileFit.class))
        .containsExactly("field A names no seam clamp or rib bracket (attachment)");
  }
}
