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
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A value that cannot be read is a problem; what hangs on it is not checked, and never a defect.
 */
class UnreadableValuesTest {

  private static final Reviewer REVIEWER = new Reviewer();

  /** Rules whose reasons do not yet tell what could not be read from what is missing. */
  private static final Path RULES_OF_LOADS = Path.of("rules/loads");

  /**
   * The base jobs have no findings, so each finding here would come from the lost value alone; and
   * what is written but unreadable is never said to be missing.
   */
  @ParameterizedTest
  @ValueSource(strings = {"seam-roof", "rib-roof", "corrugated-roof"})
  void noValueThatCannotBeReadMakesAFindingOrIsCalledMissing(String base) throws IOException {
    String text = Files.readString(Path.of("rules/base", base + ".yaml"));
    Set<String> before = reasons(review(text));
    List<String> made = new ArrayList<>();
    assertThat(values(text)).hasSizeGreaterThan(20);
    for (Node.Scalar value : values(text)) {
      Review review = review(without(text, value));
      assertThat(review.problems()).as(value.toString()).isNotEmpty();
      Stream<String> missing =
          reasons(review).stream()
              .filter(reason -> !before.contains(reason) && !reason.contains("be read"));
      Stream.concat(review.findings().stream().map(UnreadableValuesTest::said), missing)
          .map(said -> value.at().start() + " " + value.text() + ": " + said)
          .forEach(made::add);
    }
    assertThat(made).isEmpty();
  }

  private static Set<String> reasons(Review review) {
    return review.notChecked().stream()
        .filter(each -> !Files.exists(RULES_OF_LOADS.resolve(each.rule() + ".drl")))
        .map(NotChecked::reason)
        .collect(Collectors.toSet());
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
