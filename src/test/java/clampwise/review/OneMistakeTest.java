package clampwise.review;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.source.SourceFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One slip in the job with which everybody begins is told once, without what follows from it. */
class OneMistakeTest {

  private static final Path STARTER = Path.of("src/main/resources/clampwise/cli/starter.yaml");

  private final Reviewer reviewer = new Reviewer();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{per-edge: 2}|{zones: {feild: 2, edge: 1}}|no wind zone named \"feild\"",
        "mid-clamp: MC-30|mid-clamp: EC-30|no mid clamp named \"EC-30\"",
        "gap: 12 mm|gap: 3 in|row-gap-wider-than-mid-clamp-holds",
        "length: 60 ft|length: 1e9 ft|\"1e9 ft\"",
        "azimuth: 180 deg|azimuth: south|\"south\""
      })
  void oneSlipIsOneMark(String right, String wrong, String mark) throws IOException {
    String text = Files.readString(STARTER);
    List<String> before = marks(text);
    assertThat(text).contains(right);
    assertThat(marks(text.replaceFirst(java.util.regex.Pattern.quote(right), wrong)))
        .filteredOn(each -> !before.contains(each))
        .containsExactly(mark);
  }

  private List<String> marks(String text) {
    Review review = reviewer.review("-", text.getBytes(StandardCharsets.UTF_8), SourceFiles.none());
    List<String> marks = new ArrayList<>();
    review.problems().forEach(problem -> marks.add(problem.found()));
    review.findings().forEach(finding -> marks.add(finding.rule()));
    return marks;
  }
}
