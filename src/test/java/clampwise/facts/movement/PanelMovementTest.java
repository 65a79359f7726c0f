package clampwise.facts.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import org.junit.jupiter.api.Test;

/** Roof panels on their clips and screws. */
class PanelMovementTest {

  private static final double INCH_M = 0.0254;

  /**
   * Handbook 3.3 [read]: 40 ft of steel over 160 °F, 6.7 millionths per °F, move 0.515 in (the
   * source prints 0.51).
   */
  @Test
  void fortyFeetOfSteelMoveHalfAnInchOver160Fahrenheit() {
    PanelTravel fact =
        seams(
                """
                site: {lowest-temperature: 0 °F}
                panels: {steel seams: {hottest: 160 °F}}
                planes: {south: {size: 100 ft x 40 ft}}
                """)
            .only(PanelTravel.class);

    assertThat(fact.movementM() / INCH_M).isCloseTo(0.515, within(0.0005));
    assertThat(fact.temperatures()).isEqualTo("between 0 °F and 160 °F");
    assertThat(fact.limitFrom()).isEmpty();
  }

  /** Proportion: 10 m that move 12.06 mm over 100 K may be 20.73 m on clips of 25 mm. */
  @Test
  void theLongestRunForTheClipsIsInProportion() {
    PanelTravel fact =
        seams(
                """
                panels: {steel seams: {clip-travel: 25 mm}}
                planes: {south: {size: 30 m x 10 m}}
                """)
            .only(PanelTravel.class);

    assertThat(fact.fittingM()).isCloseTo(20.73, within(0.005));
  }

  @Test
  void aPanelFixedInTheMiddleMovesHalfAsFarAtEachEnd() {
    double whole = seams("{}").only(PanelTravel.class).movementM();
    double half =
        seams("panels: {steel seams: {fixed-point: middle}}").only(PanelTravel.class).movementM();

    assertThat(half).isCloseTo(whole / 2, within(1e-7));
  }

  @Test
  void theLongerWayFromTheDayItWasLaidCounts() {
    PanelTravel fact = seams("panels: {steel seams: {laid-at: 11 °C}}").only(PanelTravel.class);

    assertThat(fact.temperatures()).isEqualTo("between 11 °C and 71 °C");
  }

  @Test
  void withoutAWordTheSheetGetsAsHotAsSourcesSay() {
    PanelTravel fact = seams("panels: {steel seams: {hottest: ~}}").only(PanelTravel.class);

    assertThat(fact.temperatures()).isEqualTo("between -29 °C and 160 °F");
    assertThat(fact.limitFrom()).isPresent();
  }

  @Test
  void aRunGoesThroughItsEndLapsUnlessPanelsSlideThere() {
    String laps = "planes: {south: {size: 100 ft x 20 m, end-laps: [8 m, 13 m]%s}}";

    assertThat(seams(laps.formatted("")).only(PanelTravel.class).lengthM()).isEqualTo(20);
    assertThat(seams(laps.formatted(", sliding-end-laps: yes")).only(PanelTravel.class).lengthM())
        .isEqualTo(8);
  }

  @Test
  void onAHippedPlaneTheLongestSeamCounts() {
    PanelTravel fact =
        seams(
                """
                planes:
                  south:
                    size: ~
                    obstructions: ~
                    outline:
                      - {at: [0 m, 0 m], edge: eave}
                      - {at: [20 m, 0 m], edge: hip}
                      - {at: [12 m, 9 m], edge: ridge}
                      - {at: [8 m, 9 m], edge: hip}
                """)
            .only(PanelTravel.class);

    assertThat(fact.lengthM()).isCloseTo(9, within(1e-6));
  }

  @Test
  void whatIsMissingIsToldOnceAndNeverPasses() {
    assertThat(seams("panels: {steel seams: {clip-travel: ~}}").missing(PanelTravel.class))
        .containsExactly(
            "how far the clips of steel seams let it slide is not given (clip-travel)");
    assertThat(seams("panels: {steel seams: {fixed-point: ~}}").missing(PanelTravel.class))
        .containsExactly(
            "where the panel runs of steel seams are fixed is not given (fixed-point)");
    assertThat(seams("panels: {steel seams: {metal: ~}}").missing(PanelTravel.class))
        .containsExactly("the metal of steel seams is not given (metal)");
    assertThat(seams("site: {lowest-temperature: ~}").missing(PanelTravel.class))
        .containsExactly(
            "the lowest temperature of the site is not given (site: lowest-temperature)");
    assertThat(seams("planes: {south: {size: ~}}").missing(PanelTravel.class))
        .containsExactly("the size of plane south is not given (size)");
    assertThat(seams("panels: {steel seams: {clips: ~}}").missing(PanelTravel.class))
        .containsExactly("whether steel seams floats on its clips is not given (clips)");
    assertThat(seams("panels: {steel seams: {hottest: -30 °C}}").missing(PanelTravel.class))
        .containsExactly("steel seams is never hotter than the lowest temperature of the site");
  }

  @Test
  void onlyScrewedDownSheetIsAskedForItsRun() {
    assertThat(seams("{}").facts(ThroughFastenedRun.class)).isEmpty();
    assertThat(BaseJob.with("corrugated-roof", "{}").only(ThroughFastenedRun.class).runM())
        .isCloseTo(9.6393, within(5e-4));
  }

  private static BaseJob seams(String over) {
    return BaseJob.with("seam-roof", over);
  }
}
