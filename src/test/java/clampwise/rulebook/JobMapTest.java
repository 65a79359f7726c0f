package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.rulebook.JobMap.Line;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Every line of the job map is accounted for, and every rule answers a line. With {@code
 * -Dupdate.docs} the page is written.
 */
class JobMapTest {

  private static final Path PAGE = Path.of("docs/job-map-coverage.md");

  /** The last line of each topic. */
  private static final List<String> LAST =
      List.of("A11", "B22", "C16", "D6", "E11", "F19", "G18", "H16");

  @Test
  void noLineIsLeftOutAndNoneStandsTwice() throws IOException {
    List<String> ids = new ArrayList<>();
    for (String last : LAST) {
      for (int n = 1; n <= Integer.parseInt(last.substring(1)); n++) {
        ids.add(last.charAt(0) + "" + n);
      }
    }
    assertThat(JobMap.read().lines()).extracting(Line::id).containsExactlyElementsOf(ids);
  }

  @Test
  void everyRuleAnswersALineAndEveryNamedRuleExists() throws IOException {
    List<String> named =
        JobMap.read().all().stream().flatMap(line -> line.rules().stream()).distinct().toList();
    assertThat(named)
        .as("shared/job-map.yaml")
        .containsExactlyInAnyOrderElementsOf(RulePages.all().stream().map(RulePage::id).toList());
  }

  @Test
  void aLineWithoutARuleSaysWhyAPersonMustLook() throws IOException {
    assertThat(JobMap.read().all())
        .allSatisfy(line -> assertThat(line.asks()).endsWith("?"))
        .filteredOn(line -> !line.isJudged())
        .allSatisfy(line -> assertThat(line.person().split(" ")).hasSizeGreaterThan(9));
  }

  @Test
  void aHundredLinesOrMoreAreJudgedByRules() throws IOException {
    assertThat(JobMap.read().lines().stream().filter(Line::isJudged))
        .hasSizeGreaterThanOrEqualTo(100);
  }

  @Test
  void thePageSaysWhatTheMapSays() throws IOException {
    String wanted = JobMap.read().page();
    if (System.getProperty("update.docs") != null) {
      Files.writeString(PAGE, wanted);
    }
    assertThat(PAGE)
        .as("mvn -Pquick test -Dtest=JobMapTest -Dupdate.docs")
        .exists()
        .content()
        .isEqualTo(wanted);
  }
}
