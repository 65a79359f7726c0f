package clampwise;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Severity;
import clampwise.report.Paint;
import clampwise.report.ReportKind;
import clampwise.report.Run;
import clampwise.report.Sheet;
import clampwise.report.TakeoffText;
import clampwise.report.TextReport;
import clampwise.review.QuantityTaker;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.review.TakenOff;
import clampwise.source.SourceFiles;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The example jobs and the README from end to end. With {@code -Dupdate.examples} the expected
 * reviews are written anew, to be read before they are committed.
 */
class ExamplesTest {

  private static final Path EXAMPLES = Path.of("examples");
  private static final Path README = Path.of("README.md");
  private static final Pattern JOB_AND_OUTPUT =
      Pattern.compile("```yaml\n(job: .*?)```\n\n```text\n(.*?)```", Pattern.DOTALL);
  private static final Pattern PLANTED = Pattern.compile("\\| (\\d+) \\| \\[([a-z-]+)\\]");
  private static final Reviewer REVIEWER = new Reviewer();

  @TestFactory
  Stream<DynamicTest> everyExampleIsReviewedAsExpected() throws IOException {
    return jobs().stream()
        .map(job -> DynamicTest.dynamicTest(job.toString(), () -> isReviewedAsExpected(job)));
  }

  private static void isReviewedAsExpected(Path job) throws IOException {
    Path expected = job.resolveSibling("review.txt");
    String text = text(REVIEWER.review(job));
    if (System.getProperty("update.examples") != null) {
      Files.writeString(expected, text);
    }
    assertThat(text).isEqualTo(Files.readString(expected));
  }

  /** A job that carries its take-off beside it is taken off as expected. */
  @ParameterizedTest
  @ValueSource(strings = "dairy-l-shaped")
  void anExampleIsTakenOffAsExpected(String example) throws IOException {
    Path expected = EXAMPLES.resolve(example).resolve("takeoff.txt");
    TakenOff job = new QuantityTaker(Optional.empty()).takeOff(expected.resolveSibling("job.yaml"));
    Sheet sheet = new Sheet(80, Paint.NONE);
    new TakeoffText(sheet).write(job);
    if (System.getProperty("update.examples") != null) {
      Files.writeString(expected, sheet.toString());
    }
    assertThat(sheet.toString()).isEqualTo(Files.readString(expected));
  }

  /** The drawing that README and docs show. */
  @Test
  void theJuniorsBarnIsDrawnAsExpected() throws IOException {
    Path expected = EXAMPLES.resolve("barn-junior").resolve("plan.svg");
    Review review = REVIEWER.review(expected.resolveSibling("job.yaml"));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReportKind.SVG.write(new Run(List.of(review), ""), out);
    if (System.getProperty("update.examples") != null) {
      Files.write(expected, out.toByteArray());
    }
    assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo(Files.readString(expected));
  }

  @ParameterizedTest
  @ValueSource(strings = {"barn", "dairy-l-shaped", "farmhouse", "workshop-ribs"})
  void buildingsDrawnCleanHaveNoErrors(String example) {
    Review review = REVIEWER.review(EXAMPLES.resolve(example).resolve("job.yaml"));
    assertThat(review.problems()).isEmpty();
    assertThat(review.findings()).noneMatch(finding -> finding.severity() == Severity.ERROR);
    assertThat(review.coverage()).anyMatch(rule -> rule.met() > 0);
  }

  /** The findings that the README of an example lists are those of the review, at their lines. */
  @ParameterizedTest
  @ValueSource(
      strings = {"barn-junior", "boathouse", "dairy-order", "garage-wiring", "store-package"})
  void everyMistakePlantedInAnExampleIsFoundAtItsLineAndNothingElseIs(String name)
      throws IOException {
    String page = Files.readString(EXAMPLES.resolve(name).resolve("README.md"));
    List<String> planted =
        PLANTED.matcher(page).results().map(row -> row.group(1) + " " + row.group(2)).toList();
    Review review = REVIEWER.review(EXAMPLES.resolve(name).resolve("job.yaml"));
    assertThat(planted).hasSizeGreaterThan(9);
    assertThat(review.findings())
        .extracting(finding -> finding.at().start().line() + " " + finding.rule())
        .containsExactlyInAnyOrderElementsOf(planted);
  }

  @Test
  void theReadmeShowsWhatItsJobReallyGives() throws IOException {
    String readme = Files.readString(README);
    Matcher shown = JOB_AND_OUTPUT.matcher(readme);
    assertThat(shown.find()).isTrue();
    byte[] job = shown.group(1).getBytes(StandardCharsets.UTF_8);
    String text = text(REVIEWER.review("shed.yaml", job, SourceFiles.none()));
    if (System.getProperty("update.examples") != null) {
      Files.writeString(
          README, readme.substring(0, shown.start(2)) + text + readme.substring(shown.end(2)));
    } else {
      assertThat(shown.group(2)).isEqualTo(text);
    }
  }

  private static String text(Review review) {
    Sheet sheet = new Sheet(80, Paint.NONE);
    new TextReport(sheet).write(review);
    return sheet.toString();
  }

  private static List<Path> jobs() throws IOException {
    try (Stream<Path> folders = Files.list(EXAMPLES)) {
      return folders
          .map(folder -> folder.resolve("job.yaml"))
          .filter(Files::exists)
          .sorted()
          .toList();
    }
  }
}
