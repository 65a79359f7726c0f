package clampwise.facts.loads;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.facts.BaseJob;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pattern that a remedy names, drawn as it says, carries the loads. */
class SeamPatternsTest {

  private static final Pattern EVERY = Pattern.compile("attach at every (second )?seam.*");

  @ParameterizedTest
  @ValueSource(ints = {105, 110, 115, 120})
  void thePatternOfTheRemedyClearsTheOverloadWhereverItStarts(int mph) {
    int every = narrowest(job(mph, "per-edge: 2"));
    for (int from = 1; from <= every; from++) {
      assertThat(shares(job(mph, "every: %d, from: %d".formatted(every, from))))
          .isNotEmpty()
          .allMatch(share -> share <= 1);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {170, 200})
  void whereEvenEverySeamIsTooFewTheRemedySaysSo(int mph) {
    BaseJob everySeam = job(mph, "every: 1");
    assertThat(shares(everySeam)).anyMatch(share -> share > 1);
    assertThat(remedies(everySeam))
        .isNotEmpty()
        .allMatch(remedy -> remedy.endsWith("even every seam is too few"));
  }

  private static List<Double> shares(BaseJob job) {
    return job.facts(AttachmentUse.class).stream().map(AttachmentUse::utilisation).toList();
  }

  private static List<String> remedies(BaseJob job) {
    return job.facts(AttachmentUse.class).stream()
        .filter(use -> use.utilisation() > 1)
        .map(use -> use.spacing().orElseThrow())
        .toList();
  }

  private static BaseJob job(int mph, String attach) {
    return BaseJob.replacing(
        "seam-roof",
        "115 mph",
        mph + " mph",
        "up: 640 lbf",
        "up: 240 lbf",
        "columns: 4",
        "columns: 1",
        "attach: {per-edge: 2}",
        "attach: {" + attach + "}");
  }

  /** The narrowest pattern of all remedies. */
  private static int narrowest(BaseJob job) {
    return remedies(job).stream().mapToInt(SeamPatternsTest::every).min().orElseThrow();
  }

  private static int every(String remedy) {
    Matcher words = EVERY.matcher(remedy);
    assertThat(words.matches()).as(remedy).isTrue();
    return "second ".equals(words.group(1)) ? 2 : 1;
  }
}
