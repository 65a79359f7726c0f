package clampwise.facts.clamps;

import static clampwise.facts.clamps.ClampJobs.of;
import static org.assertj.core.api.Assertions.assertThat;

import clampwise.facts.BaseJob;
import clampwise.facts.clamps.ClampJobs.Row;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of modules over seams, from the job file to the facts. */
class RowPhaseTest {

  private static final Pattern BETWEEN = Pattern.compile("between ([\\d .]+) mm and ([\\d .]+) mm");

  /**
   * Handbook table 3.4 [computed]: 1722 mm modules with 12 mm gaps, the first corner on a seam;
   * which of twelve find a seam in the zone from both corners.
   */
  @ParameterizedTest
  @CsvSource({
    "304.8, 234 to 326 mm, 7 10",
    "304.8, 150 to 500 mm, 1 2 3 4 5 6 7 8 9 10 11 12",
    "304.8, 0 to 430 mm, 1 2 3 4 5 6 7 8 9 10 11 12",
    "406.4, 234 to 326 mm, 10",
    "406.4, 150 to 500 mm, 2 3 4 6 7 8 9 10 12",
    "406.4, 0 to 430 mm, 1 2 3 4 5 6 7 8 9 10 11 12",
    "457.2, 234 to 326 mm, ''",
    "457.2, 150 to 500 mm, 1 3 5 6 10 11",
    "457.2, 0 to 430 mm, 1 2 3 4 5 6 7 8 9 10 11 12",
    "609.6, 234 to 326 mm, 10",
    "609.6, 150 to 500 mm, 3 4 10 11",
    "609.6, 0 to 430 mm, 2 3 4 5 9 10 11",
  })
  void theSeamsReachTheModulesOfTable34(double pitchMm, String zone, String modules) {
    Row row = Row.of(1722, pitchMm, zone);
    List<String> expected =
        Arrays.stream(modules.split(" "))
            .filter(number -> !number.isEmpty())
            .map(number -> "A.R1C" + number)
            .toList();

    assertThat(row.phase().inZone()).isEqualTo(expected.size());
    assertThat(of(ZoneGrip.class, row.facts()))
        .extracting(ZoneGrip::module)
        .containsExactlyElementsOf(expected);
  }

  /** Handbook 3.4, second table [computed]: the most modules out of twelve for any start. */
  @ParameterizedTest
  @CsvSource({
    "1722, 304.8, 234 to 326 mm, 2",
    "1722, 406.4, 150 to 500 mm, 10",
    "1722, 457.2, 150 to 500 mm, 8",
    "1722, 609.6, 150 to 500 mm, 5",
    "1722, 609.6, 0 to 430 mm, 8",
    "1722, 609.6, 200 to 660 mm, 7",
  })
  void theRemedyNamesTheBestStartOfTable34(double moduleMm, double pitchMm, String zone, int best) {
    RowPhase phase = Row.of(moduleMm, pitchMm, zone).phase();

    assertThat(phase.better())
        .startsWith("no start of the row brings all 12 modules into the zone")
        .contains("it is " + best + ")");
  }

  /** Handbook 3.4 [computed]: 2278 mm modules on 18 in seams pass all together or not at all. */
  @Test
  void theStartTheRemedyNamesBringsAllModulesIntoTheZone() {
    Row missing = Row.of(2278, 457.2, "150 to 500 mm").startingAt(4572 + 357.2);
    Matcher between = BETWEEN.matcher(missing.phase().better());

    assertThat(missing.phase().inZone()).isZero();
    assertThat(between.find()).as(missing.phase().better()).isTrue();
    double fromMm = number(between.group(1));
    double toMm = number(between.group(2));
    assertThat(missing.startingAt(fromMm).phase().inZone()).isEqualTo(12);
    assertThat(missing.startingAt(toMm).phase().inZone()).isEqualTo(12);
    assertThat(missing.startingAt(fromMm - 1).phase().inZone()).isLessThan(12);
    assertThat(missing.startingAt(toMm + 1).phase().inZone()).isLessThan(12);
  }

  @Test
  void aZoneThatDoesNotCarryTheDesignLoadIsNoRemedy() {
    String over =
        """
        modules:
          M30:
            clamp-zones:
              - {side: long, zone: 234 mm to 326 mm, down: 2400 Pa, up: 1600 Pa}
              - {side: long, zone: 0 mm to 430 mm, down: 1600 Pa, up: 1600 Pa}
        fields: {A: {design-load: {down: 2000 Pa}}}
        """;
    assertThat(BaseJob.with("seam-roof", over).facts(RowPhase.class))
        .isNotEmpty()
        .allSatisfy(
            row ->
                assertThat(row.better())
                    .endsWith("carries 1600 Pa down where the design load is 2000 Pa")
                    .doesNotContain("what would: the"));
  }

  /** Geometry: a zone as wide as the pitch always catches a seam. */
  @Test
  void aZoneAsWideAsThePitchNeverMisses() {
    for (int startMm = 4000; startMm < 4400; startMm += 37) {
      assertThat(Row.of(1722, 400, "100 to 500 mm").startingAt(startMm).phase().inZone())
          .isEqualTo(12);
    }
  }

  @Test
  void withoutSeamsTheRowIsNotChecked() {
    var facts =
        ClampJobs.facts(
            """
            job: no seams
            panels: {sheet: {kind: standing-seam}}
            planes: {roof: {panel: sheet, size: 20 m x 8 m}}
            modules:
              M:
                length: 1722 mm
                width: 1134 mm
                clamp-zones: [{side: long, zone: 0 to 430 mm}]
            fields:
              A:
                plane: roof
                module: M
                orientation: landscape
                gap: 12 mm
                block: {at: [1 m, 1 m], rows: 1, columns: 2}
            """);

    assertThat(of(RowPhase.class, facts)).isEmpty();
    assertThat(ClampJobs.reasons(RowPhase.class, facts))
        .containsExactly("where the seams of plane roof lie is not given (pitch)");
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace(" ", ""));
  }
}
