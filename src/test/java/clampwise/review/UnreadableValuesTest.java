package clampwise.review;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import clampwise.source.Node;
import clampwise.source.Position;
import clampwise.source.Problems;
import clampwise.source.SourceFiles;
import clampwise.source.YamlReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A value that cannot be read is a problem; what hangs on it is not checked, and never a defect.
 */
class UnreadableValuesTest {

  private static final Reviewer REVIEWER = new Reviewer();

  /**
   * The base jobs have no findings, so each finding here would come from the lost value alone; and
   * what is written but unreadable is never said to be missing.
   */
  @ParameterizedTest
  @ValueSource(strings = {"seam-roof", "rib-roof", "corrugated-roof", "wired-roof"})
  void noValueThatCannotBeReadMakesAFindingOrIsCalledMissing(String base) throws IOException {
    String text = Files.readString(Path.of("rules/base", base + ".yaml"));
    assertThat(values(text)).hasSizeGreaterThan(20);
    assertThat(made(text, values(text))).isEmpty();
  }

  private static final List<String> UNDER_THE_EUROCODES =
      List.of(
          "  codes: {loads: asce-7-16}",
          "  codes: {loads: en-1991}\n  terrain: II\n  topographic-factor: \"1.1\"",
          "  snow: {exposure-factor: \"1.0\", thermal-factor: \"1.2\", simple-rafters: no}",
          "  snow: {exposure-factor: \"1.0\"}\n  annex: {variable: \"1.5\"}\n"
              + "  wind: {disputed-rows: severe}");

  private static final List<String> BESIDE_A_HIGHER_ROOF =
      List.of(
          "  codes: {loads: asce-7-16}",
          "  codes: {loads: asce-7-22}\n  topographic-factor: \"1.1\"\n  elevation: 900 ft",
          "  snow: {exposure-factor: \"1.0\", thermal-factor: \"1.2\", simple-rafters: no}",
          "  snow: {exposure-factor: \"1.0\", thermal-factor: \"1.2\", simple-rafters: no,"
              + " winter-wind: \"0.4\", higher-roof: {beside: south, rise: 6 ft, length: 40 ft,"
              + " eave-to-ridge: 20 ft, slope: 3:12, slippery: yes}}\n"
              + "  wind: {exposed-edge: severe}\n  clamps-share-edge: no\n  method: asd",
          "size: 100 ft x 31 ft 7 1/2 in",
          "size: 100 ft x 31 ft 7 1/2 in\n    edges: {left: wall}",
          "  roof: gable",
          "  roof: gable\n  enclosure: enclosed\n  parapet: 0 ft");

  private static final List<String> EXPEDITED =
      List.of(
          "    azimuth: 180 deg\n",
          "    azimuth: 180 deg\n    snow-retention: {on: seams, in-loads: yes}\n",
          "    tilt: 0 deg\n",
          "    tilt: 0 deg\n    hardware-mass: 1 kg\n",
          "claims:\n",
          "claims:\n  path: expedited\n  live-load-under-array: no\n"
              + "  pressures-are: service\n  pressures: {field: {up: 40 psf, down: 20 psf}}\n"
              + "  edge-factor: 1.5\n  equalisation-factor: 1\n  equalisation-area: 20 ft2\n"
              + "  slope-factor: 1\n  tributary: {inner-line: 20 ft2}\n  utilisation: 1\n");

  static Stream<List<String>> additions() {
    return Stream.of(UNDER_THE_EUROCODES, BESIDE_A_HIGHER_ROOF, EXPEDITED);
  }

  /** The same for values of which the base jobs have none. */
  @ParameterizedTest
  @MethodSource("additions")
  void noValueThatIsAddedMakesAFindingOrIsCalledMissing(List<String> replacements)
      throws IOException {
    String base = Files.readString(Path.of("rules/base/seam-roof.yaml"));
    Set<String> lines = base.lines().collect(Collectors.toSet());
    String text = base;
    for (int i = 0; i < replacements.size(); i += 2) {
      assertThat(text).contains(replacements.get(i));
      text = text.replace(replacements.get(i), replacements.get(i + 1));
    }
    List<String> all = text.lines().toList();
    List<Node.Scalar> added =
        values(text).stream()
            .filter(value -> !lines.contains(all.get(value.at().start().line() - 1)))
            .toList();
    assertThat(added).isNotEmpty();
    assertThat(made(text, added)).isEmpty();
  }

  /** What is found or called missing in a job only because one of some values is lost. */
  private static List<String> made(String text, List<Node.Scalar> values) {
    Review whole = review(text);
    assertThat(whole.problems()).isEmpty();
    Set<String> before = reasons(whole);
    whole.findings().stream().map(Finding::rule).forEach(before::add);
    List<String> made = new ArrayList<>();
    for (Node.Scalar value : values) {
      Review review = review(without(text, value));
      assertThat(review.problems()).as(value.toString()).isNotEmpty();
      Stream<String> missing =
          reasons(review).stream()
              .filter(reason -> !before.contains(reason) && !isOfAFault(reason));
      Stream<String> found =
          review.findings().stream()
              .filter(finding -> !before.contains(finding.rule()))
              .map(UnreadableValuesTest::said);
      Stream.concat(found, missing)
          .map(said -> value.at().start() + " " + value.text() + ": " + said)
          .forEach(made::add);
    }
    return made;
  }

  /** What could not be read, and what could not be computed because of it. */
  private static boolean isOfAFault(String reason) {
    return reason.contains("be read") || reason.contains("could be computed");
  }

  private static Set<String> reasons(Review review) {
    return review.notChecked().stream()
        .map(NotChecked::reason)
        .collect(Collectors.toCollection(HashSet::new));
  }

  @Test
  void aFieldThatCannotBeReadLeavesTheCountsOfTheDrawingUnchecked() throws IOException {
    String text = Files.readString(Path.of("rules/base/seam-roof.yaml"));

    Review review = review(text.replace("gap: 12 mm\n    top", "gap: 12\n    top"));

    assertThat(review.problems())
        .singleElement()
        .satisfies(p -> assertThat(p.found()).contains("12"));
    assertThat(review.findings()).isEmpty();
    assertThat(review.notChecked())
        .filteredOn(each -> each.rule().equals("count-differs-from-drawing"))
        .hasSize(4)
        .extracting(NotChecked::reason)
        .containsOnly("field A could not be read or laid out as written");
  }

  @Test
  void aJumperThatCannotBeReadLeavesTheGroundPathsUnchecked() throws IOException {
    String text = Files.readString(Path.of("rules/base/seam-roof.yaml"));

    Review review = review(text.replace("{field: A}", "{from: A.R1C1, too: A.R1C2}"));

    assertThat(review.findings()).isEmpty();
    assertThat(review.notChecked())
        .filteredOn(each -> each.rule().equals("frames-without-ground-path"))
        .extracting(NotChecked::reason)
        .containsExactly("not all jumpers could be read");
  }

  private static String said(Finding finding) {
    return finding.rule() + ", " + finding.message();
  }

  private static Review review(String text) {
    return REVIEWER.review("job.yaml", text.getBytes(StandardCharsets.UTF_8), SourceFiles.none());
  }

  private static List<Node.Scalar> values(String text) {
    List<Node.Scalar> values = new ArrayList<>();
    collect(YamlReader.read("job.yaml", text, new Problems()).orElseThrow(), values);
    return values;
  }

  private static void collect(Node node, List<Node.Scalar> into) {
    if (node instanceof Node.Scalar scalar) {
      into.add(scalar);
    } else if (node instanceof Node.Sequence list) {
      list.items().forEach(item -> collect(item, into));
    } else if (node instanceof Node.Mapping mapping) {
      mapping.entries().forEach(entry -> collect(entry.value(), into));
    }
  }

  /** The text with a mapping, which fits nowhere, in the place of a value. */
  private static String without(String text, Node.Scalar value) {
    int from = offset(text, value.at().start());
    int to = offset(text, value.at().end());
    return text.substring(0, from) + "{no: such}" + text.substring(to);
  }

  private static int offset(String text, Position at) {
    int line = 0;
    for (int n = 1; n < at.line(); n++) {
      line = text.indexOf('\n', line) + 1;
    }
    return line + at.column() - 1;
  }
}
