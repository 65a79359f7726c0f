package clampwise.calc.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Rails worked by hand from stated rules: common practice, no source. */
class RailRunTest {

  /**
   * Two rails, 1.2 m between attachments, 0.4 m past the last, 75 mm past modules, 4.2 m pieces.
   */
  private static final RailRules RULES = new RailRules(2, 1.2, 0.4, 0.075, 4.2);

  /** Ten modules of 1.722 m with gaps of 12 mm are 17.328 m, so a rail is 17.478 m. */
  @Test
  void aRowOfTenModulesNeedsWhatIsCountedByHand() {
    RailRun run = new RailRun(10, 17.328, RULES);
    assertThat(run.railM()).isCloseTo(17.478, within(1e-9));
    assertThat(run.pieces()).as("2 x 17.478 / 4.2 = 4.16, so 5 each").isEqualTo(10);
    assertThat(run.splices()).isEqualTo(8);
    assertThat(run.attachments()).as("(17.478 - 0.8) / 1.2 = 13.9, so 15 each").isEqualTo(30);
    assertThat(run.midClamps()).isEqualTo(18);
    assertThat(run.endClamps()).isEqualTo(4);
  }

  @Test
  void aSingleModuleStillHasTwoAttachmentsOnEachRail() {
    RailRun run = new RailRun(1, 0.6, RULES);
    assertThat(run.attachments()).isEqualTo(4);
    assertThat(run.splices()).isZero();
    assertThat(run.midClamps()).isZero();
  }

  @Test
  void theSpanIsRoundedDownToWholeSeamsButNeverToNone() {
    assertThat(RULES.atSeams(0.4).spanM()).isCloseTo(1.2, within(1e-9));
    assertThat(RULES.atSeams(0.457).spanM()).isCloseTo(0.914, within(1e-9));
    assertThat(RULES.atSeams(1.5).spanM()).isCloseTo(1.5, within(1e-9));
  }

  @Test
  void aLongerRowNeverNeedsLess() {
    for (int modules = 1; modules < 40; modules++) {
      RailRun shorter = new RailRun(modules, modules * 1.734 - 0.012, RULES);
      RailRun longer = new RailRun(modules + 1, (modules + 1) * 1.734 - 0.012, RULES);
      assertThat(longer.attachments()).isGreaterThanOrEqualTo(shorter.attachments());
      assertThat(longer.pieces()).isGreaterThanOrEqualTo(shorter.pieces());
    }
  }
}
