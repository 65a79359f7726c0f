package clampwise.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import clampwise.report.SampleReview;
import clampwise.repository.Scratch;
import clampwise.review.Review;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ManyJobsTest {

  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private Screen screen = Screen.NONE;

  private int run(String... arguments) {
    return run(ManyJobsTest::review, arguments);
  }

  private int run(Desk desk, String... arguments) {
    out.reset();
    err.reset();
    Console console = new Console(InputStream.nullInputStream(), out, err, Map.of(), screen);
    return new Clampwise(console, any -> desk, List::of).run(arguments);
  }

  private static Review review(String name, Console console) {
    if (name.contains("fault")) {
      throw new IllegalStateException("wheel came off");
    }
    return name.contains("wrong") ? SampleReview.of(SampleReview.frame()) : SampleReview.of();
  }

  private Scratch jobs(String... names) {
    Scratch scratch = new Scratch(folder);
    for (String name : names) {
      scratch.files(name + "/job.yaml");
    }
    return scratch;
  }

  @Test
  void oneSummaryStandsBelowAllJobs() {
    jobs("clean", "wrong");
    assertThat(run("review", folder.toString())).isEqualTo(1);
    assertThat(out.toString(UTF_8))
        .containsOnlyOnce("Jobs (2)")
        .containsOnlyOnce("On the roof")
        .contains("all of them");
  }

  @Test
  void oneJobInAFolderNeedsNoSummary() {
    jobs("clean");
    assertThat(run("review", folder.toString())).isZero();
    assertThat(out.toString(UTF_8)).contains("Review of").doesNotContain("Jobs (");
  }

  @Test
  void aFaultInOneJobDoesNotStopTheOthers() {
    jobs("a", "fault", "wrong");
    assertThat(run("review", folder.toString())).isEqualTo(70);
    assertThat(out.toString(UTF_8)).contains("Jobs (3)", "1 job not reviewed: a fault");
    assertThat(err.toString(UTF_8))
        .startsWith("clampwise: " + folder + "/fault/job.yaml: internal fault (IllegalState");
  }

  @Test
  void anEmptyFolderDoesNotPassSilently() throws IOException {
    Files.createDirectories(folder.resolve("empty"));
    assertThat(run("review", folder.resolve("empty").toString())).isEqualTo(2);
    assertThat(out.toString(UTF_8)).contains("a folder without a job");
    assertThat(run("review", folder + "/*.yaml")).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "2", "8"})
  void theOutputIsTheSameOnAnyNumberOfCores(String cores) {
    jobs("a1", "a2", "a10", "wrong1", "wrong2", "b", "c", "fault1", "d");
    run("review", "--format", "json", folder.toString());
    String all = out.toString(UTF_8);
    run("review", "--cores", cores, "--format", "json", folder.toString());
    assertThat(out.toString(UTF_8)).isEqualTo(all);
  }

  @Test
  void namedTogetherJobsSayWhatTheySayInAFolder() {
    Scratch scratch = jobs("a", "wrong");
    run("review", scratch.path("a/job.yaml"), scratch.path("wrong/job.yaml"));
    String named = out.toString(UTF_8);
    run("review", folder.toString());
    assertThat(out.toString(UTF_8)).isEqualTo(named);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "two", "", "99999"})
  void coresAreANumber(String cores) {
    assertThat(run("review", "--cores", cores, "x.yaml")).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("--cores takes a number");
  }

  @Test
  void reportsHoldAllJobsAndAreNeverWrittenOverOne() throws IOException {
    Scratch scratch = jobs("a", "wrong");
    Path report = folder.resolve("all.sarif");
    assertThat(run("review", "--report", report.toString(), folder.toString())).isEqualTo(1);
    assertThat(report).content().contains("\"exitCode\" : 1");
    scratch.files("x.job.json");
    String over = scratch.path("x.job.json");
    assertThat(run("review", "--report", over, folder.toString())).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("would write over the job");
    assertThat(Path.of(over)).content().isEqualTo("x.job.json");
  }

  @Test
  void progressIsShownOnATerminalAndClearedAgain() {
    jobs("a", "b", "c");
    screen = new Screen(true, 80, true);
    run(ManyJobsTest::slowly, "review", folder.toString());
    assertThat(err.toString(UTF_8)).contains("1 of 3 jobs").endsWith("\r\u001b[K");
    run(ManyJobsTest::slowly, "review", "--quiet", folder.toString());
    assertThat(err.toString(UTF_8)).isEmpty();
    screen = new Screen(true, 80);
    run(ManyJobsTest::slowly, "review", folder.toString());
    assertThat(err.toString(UTF_8)).isEmpty();
  }

  private static Review slowly(String name, Console console) {
    try {
      Thread.sleep(150);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
    return review(name, console);
  }
}
