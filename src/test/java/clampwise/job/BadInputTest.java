package clampwise.job;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.source.Problem;
import java.time.Duration;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said about values that cannot be meant, each at its place. */
class BadInputTest {

  @Test
  void allProblemsAreReportedAtOnce() {
    ReadJob read =
        ReadJob.withField(
            """
            gpa: 12 mm
            mid-clamp: [a]
            top-height: 12
            tilt: 95 deg
            column-gap: 4 mm
            column-gap: 5 mm
            set-out-from: seam
            design-load: {down: 2.4 kPa, sideways: 1 kPa}
            """);
    assertThat(read.said())
        .hasSize(7)
        .anyMatch(said -> said.startsWith("13:5 the unknown key \"gpa\"; a key of a field"))
        .anyMatch(said -> said.endsWith("nearest gap"))
        .contains("14:16 a list; a text")
        .anyMatch(said -> said.startsWith("15:17 \"12\" without a unit; a length"))
        .contains("16:11 \"95 deg\"; a slope from 0 to below 90 deg")
        .contains("18:5 the key \"column-gap\" twice; one; the first stands in line 17")
        .contains("19:19 \"seam\"; one of eave, seams; nearest seams")
        .contains("20:34 the unknown key \"sideways\"; a key of design-load: down, up");
    assertThat(read.job()).isPresent();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "orientation: landscape|orientaton: landscape|the unknown key \"orientaton\"|orientation",
        "kind: standing-seam|knd: standing-seam|the unknown key \"knd\"|kind",
        "panel: r|panell: r|the unknown key \"panell\"|panel",
        "plane: p|plan: p|the unknown key \"plan\"|plane",
        "job: Small|jop: Small|the unknown key \"jop\"|job"
      })
  void aMisspeltKeyThatIsNeededIsOneProblem(
      String right, String wrong, String found, String nearest) {
    String text = ReadJob.SMALL.replace(right, wrong);
    assertThat(text).isNotEqualTo(ReadJob.SMALL);
    assertThat(ReadJob.of(text).problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.found()).isEqualTo(found))
        .satisfies(problem -> assertThat(problem.nearest()).hasValue(nearest));
  }

  @Test
  void whereATextBreaksOffTheSectionIsNotSpokenOf() {
    String text = ReadJob.SMALL.replace("    plane: p", "  plane: p");
    assertThat(ReadJob.of("site: C\n" + text).said())
        .hasSize(2)
        .anyMatch(said -> said.startsWith("1:7 \"C\"; site: a mapping"))
        .anyMatch(said -> said.contains("a colon where no key can stand"));
  }

  @Test
  void withoutAKeyLikeItAllAreNamed() {
    assertThat(ReadJob.of("wxyz: 1\n" + ReadJob.SMALL).problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.expected()).contains("fields, bonding", "roof"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bonding: {jumpers: [{form: A.R1C1, to: A.R1C2}]}",
        "bonding: {jumpers: [{from: A.R1C1, ot: A.R1C2}]}",
        "bonding: {jumpers: [{feild: A}]}"
      })
  void aMisspeltEndOfAJumperIsOneProblem(String line) {
    assertThat(ReadJob.of(ReadJob.SMALL + line + "\n").problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.found()).startsWith("the unknown key"));
  }

  @Test
  void aUnitThatDoesNotExistIsOneProblem() {
    String units = "units: {length: mmm, pressure: kPaa}\n";
    ReadJob read =
        ReadJob.of(units + ReadJob.SMALL + "    gap: 12\n    design-load: {down: 2.4}\n");
    assertThat(read.said())
        .containsExactly(
            "1:17 \"mmm\"; a unit of length; nearest mm",
            "1:32 \"kPaa\"; a unit of pressure; nearest kPa");
    assertThat(read.field("A").gap()).isEmpty();
    assertThat(read.job().orElseThrow().unreadable().touches("fields", "A", "gap")).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "loads: {snow: {exposure-factor: 1,0}}|13:35 the unknown key \"0\"; a point for decimals, such as 1.5, and brackets round a list: in braces a comma ends the value",
        "site: {codes: {loads: asce-7-10}}|13:23 \"asce-7-10\"; one of asce-7-16, asce-7-22, en-1991; nearest asce-7-16",
        "electrical: {code: nec-2019}|13:20 \"nec-2019\"; one of nec-2017, nec-2020, nec-2023, iec-62548, bs-7671, as-nzs-5033; nearest nec-2017",
        "install: {torqus: {}}|13:11 the unknown key \"torqus\"; a key of install: tolerance, re-datum, squareness, begins, ends, tools, torques, torque-log and others; nearest torques",
        "roof: {under-warranty: Yes}|13:24 \"Yes\"; yes or no; nearest yes",
        "site: {risk-category: 2}|13:23 \"2\"; one of I, II, III, IV; nearest II",
        "site: {exposure: E}|13:18 \"E\"; one of B, C, D",
        "site: {corrosivity: C6}|13:21 \"C6\"; one of C1, C2, C3, C4, C5, CX"
      })
  void aHintNamesWhatIsMeantOrNothing(String line, String said) {
    assertThat(ReadJob.of(ReadJob.SMALL + line + "\n").said()).containsExactly(said);
  }

  @ParameterizedTest
  @ValueSource(strings = {"180", "south"})
  void aDirectionIsNotASlope(String written) {
    String job = ReadJob.SMALL.replace("slope: 4:12", "slope: 4:12, azimuth: " + written);
    assertThat(ReadJob.of(job).problems())
        .extracting(Problem::expected)
        .containsExactly("a compass direction, such as 180 deg");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "gap: 1e9 mm|13:10 \"1e9 mm\"; a length such as 22 ft, 7 1/2 in, 30 mm or 1.2 m",
        "gap: -3 mm|13:10 \"-3 mm\"; a length from 0 to 10000 m",
        "gap: 99999 m|13:10 \"99999 m\"; a length from 0 to 10000 m",
        "gap: {mm: 12}|13:10 a mapping; a length with its unit, such as 12 mm or 3/4 in",
        "block: 4 x 10|13:12 \"4 x 10\"; block: a mapping with the keys at, rows, columns, omit",
        "columns: 5|13:14 \"5\"; a list, such as [a, b]",
        "attach: {every: 0}|13:21 \"0\"; a whole number from 1 to 1000000",
        "attach: {per-edge: 0}|13:24 \"0\"; a whole number from 1 to 1000000",
        "attach: {per-edge: 2, from: 3}|13:33 from without every; the key every",
        "columns: []|13:14 an empty list; one item or more, or no key",
        "attach: {every: two}|13:21 \"two\"; a whole number from 1 to 1000000",
        "attach: {per-edge: 2.5}|13:24 \"2.5\"; a whole number from 1 to 1000000",
        "attach: {points: [~]}|13:23 nothing; a point: a mapping with the keys at, part, clamp",
        "attach: {points: [{at: 1 m}]}|13:28 \"1 m\"; a spot: along the eave and up the slope, such as [6 ft, 3 ft]",
        "other-modules: [m]|13:20 a list; a mapping of names, such as north: {...}",
        "block: {rows: 2, columns: 3}|13:12 block without at; the key at",
        "like: B|13:11 no field named \"B\"; the name of a field",
        "like: [A]|13:11 a list; the name of a field",
        "allowed-spacing: {feild: 4 ft}|13:23 no wind zone named \"feild\"; field, edge, corner or a zone of the figure such as 2e or G; nearest field",
        "attach: {zones: {1: 2, cornor: 1}}|13:28 no wind zone named \"cornor\"; field, edge, corner or a zone of the figure such as 2e or G; nearest corner",
        "like: A|13:11 fields that are like each other; an end of the chain"
      })
  void aWrongValueIsReportedWhereItStands(String line, String said) {
    assertThat(ReadJob.withField(line).said()).containsExactly(said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "site: {topographic-factor: 0.9}|13:28 \"0.9\"; a number from 1 to 4",
        "building: {mean-roof-height: 16 000 ft}|13:30 \"16 000 ft\"; a height from 0 to 500 m",
        "site: {elevation: 9000 m}|13:19 \"9000 m\"; a height from 0 to 6000 m",
        "site: {elevation: -5 ft}|13:19 \"-5 ft\"; a length from 0 to 10000 m",
        "site: {wind-speed: 0 mph}|13:20 \"0 mph\"; a speed from 1 to 200 m/s",
        "site: {ground-snow: 80 kPa}|13:21 \"80 kPa\"; a pressure from 0 to 50 kPa",
        "loads: {wind: {edge-factor: 1.2}}|13:29 \"1.2\"; 1 or 1.5",
        "loads: {wind: {equalisation-end: 0.5}}|13:34 \"0.5\"; 0.40 or 0.45",
        "loads: {wind: {hip-curve: to-150-sq-ft}}|13:27 \"to-150-sq-ft\"; one of to-100-sq-ft, to-200-sq-ft",
        "loads: {snow: {thermal-factor: 12}}|13:32 \"12\"; a number from 0.5 to 1.5",
        "loads: {snow: {winter-wind: 55}}|13:29 \"55\"; a number from 0 to 1",
        "claims: {slope-factor: 79}|13:24 \"79\"; a number from 0 to 1",
        "takeoff: {spares: 3}|13:19 \"3\"; a share from 0 to 100 %, such as 3 %",
        "claims: {roof-coverage: 40}|13:25 \"40\"; a share from 0 to 100 %, such as 3 %",
        "install: {begins: 2026-06-01, ends: 2026-05-01}|13:37 ends before begins; a day that is not before 2026-06-01",
        "survey: {on: yesterday}|13:14 \"yesterday\"; a date, such as 2026-04-14",
        "claims: {tributary: {inner-line: 15}}|13:34 \"15\" without a unit; an area such as 20 ft² or 1.9 m²",
        "claims: {pressures: {edgy: {up: 24 psf}}}|13:22 no wind zone named \"edgy\"; field, edge, corner or a zone of the figure such as 2e or G; nearest edge",
        "claims: {attachments-by-zone: {corners: 12}}|13:32 no wind zone named \"corners\"; field, edge, corner or a zone of the figure such as 2e or G; nearest corner"
      })
  void aWrongValueOfSiteLoadsOrClaimsIsReportedWhereItStands(String line, String said) {
    assertThat(ReadJob.of(ReadJob.SMALL + line).said()).containsExactly(said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{from: A.R1C1}|14:20 from without to; the key to",
        "{to: A.R1C1, part: J}|14:18 to without from; the key from",
        "{part: J}|14:13 a jumper without ends; from and to, or field",
        "{}|14:13 a jumper without ends; from and to, or field",
        "{field: A, to: A.R1C2}|14:28 both field and to; one of the two",
        "{from: A.R1C1, to: A.R1C2, row: 1}|14:45 row without field; the key field",
        "{from: A.R1C1, to: A.R1C1}|14:32 a jumper that ends where it starts; two modules",
        "{field: A, row: 0}|14:29 \"0\"; a whole number from 1 to 1000000"
      })
  void aJumperThatTiesNothingIsReported(String jumper, String said) {
    String bonding = "bonding:\n  jumpers: [" + jumper + "]\n";
    assertThat(ReadJob.of(ReadJob.SMALL + bonding).said()).containsExactly(said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "outline: [{at: [0 m, 0 m], edge: eave}]|5:36 both outline and size; one of the two",
        "purlins: {at: [1 m], spacing: 2 m}|5:91 both at and spacing; one of the two",
        "seams: {count: 0}|5:76 \"0\"; a whole number from 1 to 1000000",
        "seams: {surveyed: []}|5:79 an empty list; one item or more, or no key"
      })
  void aKeyOfAPlaneThatWouldBePassedOverIsReported(String key, String said) {
    String size = "size: 100 ft x 31 ft 7 1/2 in";
    assertThat(ReadJob.of(ReadJob.SMALL.replace(size, size + ", " + key)).said())
        .containsExactly(said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "exposure: c|1:18 \"c\"; one of B, C, D; nearest C",
        "terrain: iii|1:17 \"iii\"; one of 0, I, II, III, IV; nearest III",
        "risk-category: iv|1:23 \"iv\"; one of I, II, III, IV; nearest IV"
      })
  void aCategoryOfTheSiteIsOneOfItsWords(String line, String said) {
    assertThat(ReadJob.of("site: {" + line + "}\n" + ReadJob.SMALL).said()).containsExactly(said);
  }

  @Test
  void categoriesOfTheSiteAreReadAsWritten() {
    ReadJob read =
        ReadJob.of("site: {exposure: C, terrain: 0, risk-category: III}\n" + ReadJob.SMALL);
    Site site = read.job().orElseThrow().site().orElseThrow();
    assertThat(site.exposure().orElseThrow()).hasToString("C");
    assertThat(site.terrain().orElseThrow()).hasToString("0");
    assertThat(site.riskCategory().orElseThrow()).hasToString("III");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pitch: 16 in|pitch: 16 ft|3:35 \"16 ft\"; a length from 10 mm to 3 m",
        "pitch: 16 in|pitch: 16 in, thickness: 24 mm|3:53 \"24 mm\"; a thickness below 10 mm",
        "width: 1134 mm|width: 1134 mm, frame-height: 30 in|7:54 \"30 in\"; a height from 0 to 300 mm"
      })
  void aLengthInTheWrongUnitIsRefusedWhereNothingIsThatLong(
      String right, String wrong, String said) {
    assertThat(ReadJob.of(ReadJob.SMALL.replace(right, wrong)).said()).containsExactly(said);
  }

  @Test
  void aPitchOfNothingIsRefused() {
    ReadJob read = ReadJob.of(ReadJob.SMALL.replace("pitch: 16 in", "pitch: 0 in"));
    assertThat(read.said()).containsExactly("3:35 \"0 in\"; a length from 10 mm to 10000 m");
  }

  @Test
  void anUnknownDefaultUnitIsReportedAtItsWord() {
    ReadJob read = ReadJob.of("units: {length: furlong}\n" + ReadJob.SMALL);
    assertThat(read.said()).containsExactly("1:17 \"furlong\"; a unit of length");
  }

  @Test
  void aFieldLikeNoneIsReportedOnceWhateverElseItHolds() {
    ReadJob read = ReadJob.withField("like: B\nattach: {per-edge: 2}\n");
    assertThat(read.said()).containsExactly("13:11 no field named \"B\"; the name of a field");
  }

  @Test
  void aThicknessWithoutUnitMayBecomeAGauge() {
    ReadJob read = ReadJob.of(ReadJob.SMALL.replace("pitch: 16 in", "thickness: 24"));
    assertThat(read.said())
        .containsExactly("3:39 \"24\" without a unit; a sheet thickness such as 24 ga or 0.6 mm");
  }

  @Test
  void aThingOfManyHasNoArticle() {
    assertThat(ReadJob.of(ReadJob.SMALL + "claims: {module: 5}\n").said())
        .singleElement()
        .asString()
        .contains("; a key of claims: zone-width,");
  }

  @Test
  void fieldsInACircleAreReportedOnce() {
    ReadJob read = ReadJob.of(ReadJob.SMALL + "  B: {like: C}\n  C: {like: D}\n  D: {like: B}\n");
    assertThat(read.problems()).hasSize(1);
    assertThat(read.job().orElseThrow().fields().unreadable()).containsExactly("B", "C", "D");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "~", "- a\n- b", "just words", "42", "--- \n"})
  void aTextThatIsNoMappingIsNoJob(String text) {
    ReadJob read = ReadJob.of(text);
    assertThat(read.job()).isEmpty();
    assertThat(read.problems()).hasSize(1);
  }

  @Test
  void hugeCountsAreRefusedBeforeAnythingIsLaidOut() {
    Assertions.assertTimeout(
        Duration.ofSeconds(20),
        () -> {
          String block = "block: {at: [1 m, 1 m], rows: %s, columns: 20000}";
          assertThat(ReadJob.withField(block.formatted("99999999")).said())
              .containsExactly("13:35 \"99999999\"; a whole number from 1 to 1000000");
          assertThat(ReadJob.withField(block.formatted("20000")).said())
              .containsExactly("13:35 more than 1000000 modules; at most 1000000 modules in a job");
        });
  }

  @Test
  void nonsenseIsQuotedShortAndOnOneLine() {
    String found =
        ReadJob.withField("orientation2: x\ngap: \"" + "x\\n".repeat(99) + "\"").said().get(1);
    assertThat(found).doesNotContain("\n").hasSizeLessThan(200);
  }
}
