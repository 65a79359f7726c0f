package clampwise.facts.loads;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.facts.BaseJob;
import org.junit.jupiter.api.Test;

/** What is missing leaves out its own load cases; what is known is judged all the same. */
class MissingLoadsTest {

  private static BaseJob facts(String... replacements) {
    return BaseJob.replacing("seam-roof", replacements);
  }

  @Test
  void withoutWindSpeedOnlyTheCasesWithoutWindAreChecked() {
    BaseJob facts = facts("  wind-speed: 115 mph\n", "");
    assertThat(facts.facts(AttachmentUse.class))
        .isNotEmpty()
        .allSatisfy(use -> assertThat(use.combination()).doesNotContain("W"));
    assertThat(facts.facts(ModuleUse.class))
        .isNotEmpty()
        .allSatisfy(use -> assertThat(use.direction()).isEqualTo("down"))
        .allSatisfy(use -> assertThat(use.zone()).isEqualTo("1"));
    assertThat(facts.missing(AttachmentUse.class))
        .containsExactly("the wind speed of the site is not given (site: wind-speed)");
    assertThat(facts.missing(AllowedSpacing.class))
        .containsExactly("the wind speed of the site is not given (site: wind-speed)");
    assertThat(facts.facts(LimitStates.class)).isNotEmpty();
  }

  @Test
  void snowOverloadsAnAttachmentWhateverTheWind() {
    BaseJob facts = facts("  wind-speed: 115 mph\n", "", "down: 600 lbf", "down: 60 lbf");
    assertThat(facts.facts(AttachmentUse.class))
        .filteredOn(use -> use.utilisation() > 1)
        .isNotEmpty()
        .allSatisfy(use -> assertThat(use.combination()).isEqualTo("D + S"));
  }

  @Test
  void withoutGroundSnowAWrittenSpacingIsStillHeldAgainstUplift() {
    AllowedSpacing known = facts().facts(AllowedSpacing.class).get(0);
    BaseJob facts = facts("  ground-snow: 20 psf\n", "");
    AllowedSpacing uplift = facts.facts(AllowedSpacing.class).get(0);
    assertThat(known.pull()).isEqualTo("uplift");
    assertThat(uplift.computedM()).isEqualTo(known.computedM());
    assertThat(facts.missing(AllowedSpacing.class)).isNotEmpty();
  }

  @Test
  void modulesBesideTheRoofHaveNoWindZoneAndTheirSpacingIsNotChecked() {
    BaseJob facts = facts("at: [20 ft, 8 ft]", "at: [20 ft, -4 ft]");
    assertThat(facts.missing(AllowedSpacing.class))
        .contains("modules of field A lie in no wind zone");
  }

  @Test
  void aSpacingFollowsTheInteractionOfThePart() {
    double linearM = spacingM("linear");
    double quadraticM = spacingM("quadratic");
    double noneM = spacingM("none");
    assertThat(linearM).isLessThan(quadraticM);
    assertThat(quadraticM).isLessThan(noneM);
  }

  private static double spacingM(String interaction) {
    String row = "          report: T-1";
    return facts(row, row + "\n          interaction: " + interaction)
        .facts(AllowedSpacing.class)
        .get(0)
        .computedM();
  }

  @Test
  void aTestThatStatesNoLoadOneWayLeavesSpacingsUncheckedThatWay() {
    BaseJob facts = facts("          up: 640 lbf\n", "");
    assertThat(facts.missing(AllowedSpacing.class))
        .containsExactly("the test of SC-1 states no load away from the roof (up)");
    assertThat(facts.facts(AllowedSpacing.class))
        .isNotEmpty()
        .allSatisfy(spacing -> assertThat(spacing.pull()).isEqualTo("pressure"));
  }
}
